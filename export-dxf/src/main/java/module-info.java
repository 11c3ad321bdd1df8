/** Writes DXF files, and reads outlines from them. */
module dev.calotte.export.dxf {
    requires transitive dev.calotte.core;

    exports dev.calotte.dxf;

    provides dev.calotte.export.Exporter with
            dev.calotte.dxf.DxfExporter;
    provides dev.calotte.export.OutlineReader with
            dev.calotte.dxf.DxfOutlineReader;
}
