/** Writes STL files. */
module dev.calotte.export.stl {
    requires transitive dev.calotte.core;
}
