package dev.calotte.dxf;

import java.io.IOException;

/** Begins entities as a release wants them. Colours and line types are those of the layers. */
interface Entities {

    /**
     * Begins an entity.
     *
     * @param type what it is
     * @param layer where it lies
     * @param subclass what releases from 2000 on call that which is special about its type
     * @return takes the rest of its tags
     */
    TagWriter begin(String type, Layer layer, String subclass) throws IOException;

    /** Entities of release 2000, each with a handle, and with that of the space it lies in. */
    static Entities release2000(TagWriter tags, Handles handles, String space) {
        return (type, layer, subclass) -> {
            tags.text(0, type);
            tags.text(5, handles.next());
            tags.text(330, space);
            tags.text(100, "AcDbEntity");
            tags.text(8, layer.name());
            tags.text(100, subclass);
            return tags;
        };
    }
}
