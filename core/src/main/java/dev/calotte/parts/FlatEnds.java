package dev.calotte.parts;

/**
 * How a tube with flattened ends is marked out before it is bent. The flats lie in the planes that touch the sphere at
 * the two hubs, so that at each bend the tube turns by its axial angle, and between the bends it runs beside the chord,
 * outside it. Where the gaps at its ends differ, the bends differ too, by less than the angle whose tangent is the
 * difference of the gaps over the tube's length; then the angle is the mean of both.
 *
 * @param holeToHoleMm from the centre of one hole to that of the other, along the straight tube
 * @param holeFromEndMm from either end of the tube to the centre of the hole
 * @param bendFromEndMm from either end of the tube to the bend line
 * @param bendAngleRad by how much the flat is turned towards the inside of the dome
 * @param outsideMm how far outside the chord the tube runs, in its middle
 */
public record FlatEnds(
        double holeToHoleMm, double holeFromEndMm, double bendFromEndMm, double bendAngleRad, double outsideMm) {}
