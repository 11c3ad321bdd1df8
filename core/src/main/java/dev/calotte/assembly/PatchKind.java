package dev.calotte.assembly;

import dev.calotte.parts.Hand;
import java.util.List;
import java.util.Optional;

/**
 * Patches of one shape and hand.
 *
 * @param number from 1, in the order in which they are met from the crown; mirror twins share it
 * @param hand which of two mirror images it is; left is the one whose reading comes first
 * @param twin the mark of the mirror image, if the dome has such patches too
 * @param panels the marks of the kinds of its panels, in the order in which they are joined
 * @param seams how they are joined, in order
 * @param count how many patches there are
 */
public record PatchKind(
        int number, Hand hand, Optional<String> twin, List<String> panels, List<Seam> seams, int count) {

    /** What marks of patches begin with: assembled units. */
    static final String LETTER = "A";

    /**
     * A seam inside a patch; panels are given by their place in the order of joining, from 1.
     *
     * @param these what is joined
     * @param to what it is joined to
     * @param lengthMm how long the seam is, from node to node
     */
    public record Seam(List<Integer> these, List<Integer> to, double lengthMm) {

        /**
         * Copies the lists.
         *
         * @param these what is joined
         * @param to what it is joined to
         * @param lengthMm how long the seam is
         */
        public Seam {
            these = List.copyOf(these);
            to = List.copyOf(to);
        }
    }

    /**
     * Copies the lists.
     *
     * @param number from 1
     * @param hand which of two mirror images it is
     * @param twin the mark of the mirror image
     * @param panels the marks of the kinds of its panels
     * @param seams how they are joined
     * @param count how many patches there are
     */
    public PatchKind {
        panels = List.copyOf(panels);
        seams = List.copyOf(seams);
    }

    /**
     * The mark of the kind.
     *
     * @return for example {@code A2}, or of mirror twins {@code A3L}
     */
    public String mark() {
        return LETTER + number + (twin.isPresent() ? hand.letter() : "");
    }

    /**
     * How much is sewn or joined inside one patch.
     *
     * @return the lengths of all seams together, in millimetres
     */
    public double seamsMm() {
        return seams.stream().mapToDouble(Seam::lengthMm).sum();
    }
}
