/** Writes SVG files and the build book. */
module dev.calotte.export.svg {
    requires transitive dev.calotte.core;
    requires org.jsoup;

    exports dev.calotte.svg;
    exports dev.calotte.svg.book;

    provides dev.calotte.export.Exporter with
            dev.calotte.svg.SvgExporter,
            dev.calotte.svg.book.BookExporter;
}
