package dev.calotte.dxf;

import dev.calotte.dxf.TagReader.Tag;
import java.util.ArrayList;
import java.util.List;

/** The tags of an entity. */
final class Entity {

    /** Everything but the corners of a light polyline is far shorter. */
    private static final int MOST_TAGS = 700_000;

    private final Tag begin;
    private final List<Tag> tags = new ArrayList<>();

    Entity(Tag begin) {
        this.begin = begin;
    }

    void add(Tag tag) throws DxfFormatException {
        if (tags.size() == MOST_TAGS) {
            throw tag.wrong("the entity is too long");
        }
        // What stands here is far more often text than anything that is looked for.
        if (tag.code() < 100 || tag.code() == 210 || tag.code() == 220 || tag.code() == 230) {
            tags.add(tag);
        }
    }

    String type() {
        return begin.value();
    }

    List<Tag> tags() {
        return tags;
    }

    DxfFormatException wrong(String reason) {
        return begin.wrong(type() + ": " + reason);
    }

    Origin origin() {
        String layer = tags.stream()
                .filter(tag -> tag.code() == 8)
                .findFirst()
                .map(Tag::value)
                .orElse("0");
        return new Origin(begin, layer);
    }

    double number(int code) throws DxfFormatException {
        for (Tag tag : tags) {
            if (tag.code() == code) {
                return tag.number();
            }
        }
        throw wrong("code " + code + " is missing");
    }

    double number(int code, double otherwise) throws DxfFormatException {
        for (Tag tag : tags) {
            if (tag.code() == code) {
                return tag.number();
            }
        }
        return otherwise;
    }

    int whole(int code, int otherwise) throws DxfFormatException {
        for (Tag tag : tags) {
            if (tag.code() == code) {
                return tag.whole();
            }
        }
        return otherwise;
    }

    /** Whether it belongs to a sheet of paper instead of the drawing. */
    boolean isOnPaper() throws DxfFormatException {
        return whole(67, 0) == 1;
    }

    void refuseUnlessFlat() throws DxfFormatException {
        boolean upright = number(210, 0) == 0 && number(220, 0) == 0 && number(230, 1) == 1;
        if (!upright) {
            throw wrong("it does not lie in the plane of x and y; turn it there, or mirror it back");
        }
    }
}
