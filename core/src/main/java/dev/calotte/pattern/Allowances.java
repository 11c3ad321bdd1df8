package dev.calotte.pattern;

/**
 * What is added round a panel's net shape, square to its sides; below 0 it is taken off and leaves a gap.
 *
 * @param narrowMm on a side shared with a panel above
 * @param wideMm on a side shared with a panel below: a flat-felled seam folds the wide allowance of the upper panel over
 *     the narrow one of the lower, so that water runs off. Equal to the narrow one for all other joints
 * @param baseMm on sides without a neighbour: at the base and round openings
 * @param corner how they meet
 * @param hubReliefMm the radius round the hub's axis that stays free at every corner, 0 for none; the corner is cut
 *     straight, square to its bisector
 */
public record Allowances(double narrowMm, double wideMm, double baseMm, Corner corner, double hubReliefMm) {

    /** Nothing is added. */
    public static final Allowances NONE = new Allowances(0, 0, 0, Corner.POINTED, 0);

    /**
     * Checks the numbers.
     *
     * @param narrowMm any length
     * @param wideMm at least the narrow one
     * @param baseMm any length
     * @param corner how they meet
     * @param hubReliefMm 0 or more
     * @throws IllegalArgumentException if a number is out of its bounds or not finite
     */
    public Allowances {
        if (!(wideMm >= narrowMm && hubReliefMm >= 0 && Double.isFinite(wideMm - narrowMm + baseMm + hubReliefMm))) {
            throw new IllegalArgumentException("no allowances are " + narrowMm + ", " + wideMm + " and " + baseMm
                    + " mm with a hub relief of " + hubReliefMm + " mm");
        }
    }

    /**
     * The same allowance on both sides of every joint.
     *
     * @param edgeMm on shared sides
     * @param baseMm on sides without a neighbour
     * @return pointed, without relief
     */
    public static Allowances of(double edgeMm, double baseMm) {
        return new Allowances(edgeMm, edgeMm, baseMm, Corner.POINTED, 0);
    }

    /**
     * The same with other corners.
     *
     * @param other how the allowances meet
     * @return a copy
     */
    public Allowances withCorner(Corner other) {
        return new Allowances(narrowMm, wideMm, baseMm, other, hubReliefMm);
    }

    /**
     * The same with another relief.
     *
     * @param otherMm the radius round the hub's axis that stays free, 0 or more
     * @return a copy
     */
    public Allowances withHubRelief(double otherMm) {
        return new Allowances(narrowMm, wideMm, baseMm, corner, otherMm);
    }
}
