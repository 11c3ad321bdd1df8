/** Models jigs, and writes and reads STL and 3MF files. */
module dev.calotte.export.stl {
    requires transitive dev.calotte.core;
    requires java.xml;
    requires org.locationtech.jts;
    requires static org.jspecify;

    exports dev.calotte.stl;

    provides dev.calotte.export.Exporter with
            dev.calotte.stl.StlExporter;
    provides dev.calotte.export.SolidReader with
            dev.calotte.stl.StlSolidReader,
            dev.calotte.stl.PlateSolidReader;
}
