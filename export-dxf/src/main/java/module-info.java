/** Writes DXF files. */
module dev.calotte.export.dxf {
    requires transitive dev.calotte.core;
}
