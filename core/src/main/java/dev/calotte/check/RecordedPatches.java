package dev.calotte.check;

import java.util.List;

/**
 * What a record says of how panels are made into patches.
 *
 * @param way stars, rows or sectors
 * @param exactStars whether stars cover the dome
 * @param kinds the kinds of patches
 * @param patches the patches in the order in which they are joined
 * @param joins the seams between patches in order
 * @param lastSeam the length of the last of them, in millimetres
 * @param patchOf for each panel the mark of its patch
 */
public record RecordedPatches(
        String way,
        boolean exactStars,
        List<Kind> kinds,
        List<Patch> patches,
        List<Join> joins,
        double lastSeam,
        List<String> patchOf) {

    /**
     * Copies the lists.
     *
     * @param way stars, rows or sectors
     * @param exactStars whether stars cover the dome
     * @param kinds the kinds of patches
     * @param patches the patches
     * @param joins the seams between them
     * @param lastSeam the length of the last
     * @param patchOf for each panel the mark of its patch
     */
    public RecordedPatches {
        kinds = List.copyOf(kinds);
        patches = List.copyOf(patches);
        joins = List.copyOf(joins);
        patchOf = List.copyOf(patchOf);
    }

    /**
     * A kind of patches.
     *
     * @param mark its mark
     * @param hand left, right or none
     * @param mirror the mark of its mirror image, empty without one
     * @param count how many there are
     * @param panels the marks of the kinds of its panels, in the order in which they are joined
     * @param seams how they are joined
     */
    public record Kind(String mark, String hand, String mirror, int count, List<String> panels, List<Seam> seams) {

        /**
         * Copies the lists.
         *
         * @param mark its mark
         * @param hand left, right or none
         * @param mirror the mark of its mirror image
         * @param count how many there are
         * @param panels the marks of the kinds of its panels
         * @param seams how they are joined
         */
        public Kind {
            panels = List.copyOf(panels);
            seams = List.copyOf(seams);
        }
    }

    /**
     * A seam in a patch.
     *
     * @param these what is joined, by places in the order of joining, from 1
     * @param to what it is joined to
     * @param length in millimetres
     */
    public record Seam(List<Integer> these, List<Integer> to, double length) {

        /**
         * Copies the lists.
         *
         * @param these what is joined
         * @param to what it is joined to
         * @param length in millimetres
         */
        public Seam {
            these = List.copyOf(these);
            to = List.copyOf(to);
        }
    }

    /**
     * A patch.
     *
     * @param mark its mark
     * @param kind the mark of its kind
     * @param panels its panels by their places in the list of panels, in the order in which they are joined
     */
    public record Patch(String mark, String kind, List<Integer> panels) {

        /**
         * Copies the list.
         *
         * @param mark its mark
         * @param kind the mark of its kind
         * @param panels its panels
         */
        public Patch {
            panels = List.copyOf(panels);
        }
    }

    /**
     * A seam between patches.
     *
     * @param patch the mark of what is joined
     * @param to the mark of what stands already
     * @param length in millimetres
     */
    public record Join(String patch, String to, double length) {}
}
