package dev.calotte.model;

/**
 * The card that nets and single panels are cut from; so thin that its thickness does not count.
 *
 * @param lengthMm one side of a sheet
 * @param widthMm the other
 * @param tabMm how wide glue tabs are where the panels leave room for that
 */
public record Card(double lengthMm, double widthMm, double tabMm) {

    /** What is usual for small models; common practice, no source. */
    public static final double USUAL_TAB_MM = 6;

    /**
     * Checks the numbers.
     *
     * @param lengthMm above 0
     * @param widthMm above 0
     * @param tabMm above 0
     * @throws IllegalArgumentException if one of them is not, or not finite
     */
    public Card {
        if (!(Math.min(Math.min(lengthMm, widthMm), tabMm) > 0 && Double.isFinite(lengthMm + widthMm + tabMm))) {
            throw new IllegalArgumentException(
                    "no card measures " + lengthMm + " by " + widthMm + " mm with tabs of " + tabMm + " mm");
        }
    }
}
