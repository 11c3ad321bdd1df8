package dev.calotte.assembly;

import dev.calotte.dome.Panel;
import java.util.List;
import java.util.OptionalInt;

/**
 * Panels that are made into one unit before units are joined.
 *
 * @param kind what sort of patch it is
 * @param place which of its kind, from 1, from the crown and counter-clockwise
 * @param panels its panels in the order in which they are joined, the same for all patches of the kind
 * @param centre the index of the hub in the middle of a star
 */
public record Patch(PatchKind kind, int place, List<Panel> panels, OptionalInt centre) {

    /**
     * Copies the list.
     *
     * @param kind what sort of patch it is
     * @param place which of its kind
     * @param panels its panels
     * @param centre the hub in the middle of a star
     */
    public Patch {
        panels = List.copyOf(panels);
    }

    /**
     * The mark of the patch.
     *
     * @return for example {@code A2-03}
     */
    public String mark() {
        return kind.mark() + (place < 10 ? "-0" : "-") + place;
    }
}
