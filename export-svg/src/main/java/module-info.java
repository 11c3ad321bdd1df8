/** Writes SVG files. */
module dev.calotte.export.svg {
    requires transitive dev.calotte.core;

    exports dev.calotte.svg;

    provides dev.calotte.export.Exporter with
            dev.calotte.svg.SvgExporter;
}
