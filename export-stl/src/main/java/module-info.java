/** Writes STL files. */
module dev.calotte.export.stl {
    requires transitive dev.calotte.core;

    exports dev.calotte.stl;

    provides dev.calotte.export.Exporter with
            dev.calotte.stl.StlExporter;
}
