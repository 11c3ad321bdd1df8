package dev.calotte.parts;

import java.util.List;

/**
 * Struts of one length.
 *
 * @param number from 1, by rising length
 * @param chordFactor length over radius
 * @param lengthMm from node to node
 * @param cutLengthMm from cut end to cut end, the hub gaps taken off
 * @param axialAngleRad strut to the plane that touches the sphere at its hub
 * @param dihedrals the angles between the two panels of these struts, by rising angle; one kind may carry several, and
 *     a strut of the base ring carries none
 * @param count how many struts there are
 */
public record StrutKind(
        int number,
        double chordFactor,
        double lengthMm,
        double cutLengthMm,
        double axialAngleRad,
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
     * Copies the list.
     *
     * @param number from 1
     * @param chordFactor length over radius
     * @param lengthMm from node to node
     * @param cutLengthMm from cut end to cut end
     * @param axialAngleRad strut to tangent plane
     * @param dihedrals the angles between panels
     * @param count how many struts there are
     */
    public StrutKind {
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
}
