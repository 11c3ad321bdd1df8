/** Models jigs and writes STL and 3MF files, and reads STL files. */
module dev.calotte.export.stl {
    requires transitive dev.calotte.core;
    requires org.locationtech.jts;
    requires static org.jspecify;

    exports dev.calotte.stl;

    provides dev.calotte.export.Exporter with
            dev.calotte.stl.StlExporter;
    provides dev.calotte.export.SolidReader with
            dev.calotte.stl.StlSolidReader;
}
