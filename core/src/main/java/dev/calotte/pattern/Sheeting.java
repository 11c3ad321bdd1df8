package dev.calotte.pattern;

/**
 * Where the material of a cover lies, and how its edges are cut.
 *
 * @param planeMm how far the panel's inner face lies outside the plane through its hub centres; below 0 inside
 * @param thicknessMm how thick the material is, 0 for cloth and film
 * @param bevelled whether the edges are bevelled so that neighbours meet face to face, or cut square
 */
public record Sheeting(double planeMm, double thicknessMm, boolean bevelled) {

    /** Without thickness in the plane of the hub centres. */
    public static final Sheeting THIN = new Sheeting(0, 0, false);

    /**
     * Checks the numbers.
     *
     * @param planeMm any length
     * @param thicknessMm 0 or more
     * @param bevelled whether the edges are bevelled
     * @throws IllegalArgumentException if the thickness is negative or a length not finite
     */
    public Sheeting {
        if (!(thicknessMm >= 0 && Double.isFinite(thicknessMm + planeMm))) {
            throw new IllegalArgumentException("no sheeting is " + thicknessMm + " mm thick at " + planeMm + " mm");
        }
    }
}
