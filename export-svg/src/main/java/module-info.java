/** Writes SVG files. */
module dev.calotte.export.svg {
    requires transitive dev.calotte.core;
}
