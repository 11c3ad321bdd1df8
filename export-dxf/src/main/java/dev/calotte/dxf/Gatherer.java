package dev.calotte.dxf;

import dev.calotte.dxf.TagReader.Tag;

/** Takes the entities of a file in their order. */
interface Gatherer {

    /** Takes the next entity. */
    void add(Entity entity) throws DxfFormatException;

    /** Learns that there are no more; the tag is the one that says so. */
    void end(Tag tag) throws DxfFormatException;
}
