package dev.calotte.parts;

import java.util.List;
import java.util.Optional;

/**
 * Struts of one length with the same ends.
 *
 * @param number from 1, by rising length, then by rising cut length
 * @param chordFactor length over radius
 * @param lengthMm from node to node
 * @param cutLengthMm from cut end to cut end, before flattened ends are bent; with mitred rails, which have lengths of
 *     their own, from node to node
 * @param gapsMm from the hubs' axes to the two ends, the smaller first; below 0 where flattened ends reach past the axis
 * @param mergeErrorMm how far the longest and the shortest of these struts would be from this length if each were cut by
 *     itself; 0 unless unequal lengths are one kind
 * @param axialAngleRad strut to the plane that touches the sphere at its hub
 * @param flatEnds how to mark out flattened ends, if it has such
 * @param dihedrals the angles between the two panels of these struts, by rising angle; one kind may carry several, and
 *     a strut of the base ring carries none
 * @param count how many struts there are
 */
public record StrutKind(
        int number,
        double chordFactor,
        double lengthMm,
        double cutLengthMm,
        List<Double> gapsMm,
        double mergeErrorMm,
        double axialAngleRad,
        Optional<FlatEnds> flatEnds,
        List<Dihedral> dihedrals,
        int count) {

    /**
     * An angle that some struts of a kind carry.
     *
     * @param angleRad the angle inside the dome
     * @param count how many struts carry it
     */
    public record Dihedral(double angleRad, int count) {}

    /**
     * Copies the lists.
     *
     * @param number from 1
     * @param chordFactor length over radius
     * @param lengthMm from node to node
     * @param cutLengthMm from cut end to cut end
     * @param gapsMm from the hubs' axes to its ends
     * @param mergeErrorMm what unequal lengths in one kind cost
     * @param axialAngleRad strut to tangent plane
     * @param flatEnds how to mark out flattened ends
     * @param dihedrals the angles between panels
     * @param count how many struts there are
     */
    public StrutKind {
        gapsMm = List.copyOf(gapsMm);
        dihedrals = List.copyOf(dihedrals);
    }

    /**
     * The mark of the kind.
     *
     * @return for example {@code S3}
     */
    public String mark() {
        return "S" + number;
    }

    /** The same kind of another number of struts. */
    StrutKind counted(int other, List<Dihedral> theirs) {
        return new StrutKind(
                number,
                chordFactor,
                lengthMm,
                cutLengthMm,
                gapsMm,
                mergeErrorMm,
                axialAngleRad,
                flatEnds,
                theirs,
                other);
    }
}
