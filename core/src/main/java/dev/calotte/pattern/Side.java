package dev.calotte.pattern;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A side of a pattern.
 *
 * @param strut the number of the strut kind below it
 * @param lengthMm from hub centre to hub centre
 * @param dihedralRad the angle between this panel and its neighbour, measured inside the dome; absent without one, and
 *     where nothing depends on it
 * @param growthMm how far the net side lies outside the line of the hub centres, because the material does:
 *     {@code plane tan((π - dihedral) / 2)}
 * @param allowanceMm how far the cut edge lies outside the net side
 * @param lap whether the panel lies over or under its neighbour; {@link Lap#NONE} where that makes no difference to the
 *     pattern
 * @param notches its notches, counter-clockwise
 */
public record Side(
        int strut,
        double lengthMm,
        OptionalDouble dihedralRad,
        double growthMm,
        double allowanceMm,
        Lap lap,
        List<Notch> notches) {

    /**
     * Copies the list.
     *
     * @param strut the number of the strut kind
     * @param lengthMm from hub centre to hub centre
     * @param dihedralRad the angle to the neighbour
     * @param growthMm how far the net side lies outside
     * @param allowanceMm how far the cut edge lies outside the net side
     * @param lap over or under
     * @param notches its notches
     */
    public Side {
        notches = List.copyOf(notches);
    }

    /**
     * How far the edge leans from square, so that neighbours of any thickness meet face to face.
     *
     * @return half of what the dihedral lacks of a straight angle, below 0 at a hollow edge; 0 without a neighbour
     */
    public double bevelRad() {
        return (Math.PI - dihedralRad.orElse(Math.PI)) / 2;
    }
}
