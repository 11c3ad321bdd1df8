/** Writes DXF files, and reads lines and wireframes from them. */
module dev.calotte.export.dxf {
    requires transitive dev.calotte.core;
    requires static org.jspecify;

    exports dev.calotte.dxf;

    provides dev.calotte.export.Exporter with
            dev.calotte.dxf.DxfExporter;
    provides dev.calotte.export.ShapeReader with
            dev.calotte.dxf.DxfShapeReader;
    provides dev.calotte.export.WireReader with
            dev.calotte.dxf.DxfWireReader;
}
