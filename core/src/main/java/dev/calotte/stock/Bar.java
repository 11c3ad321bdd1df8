package dev.calotte.stock;

/**
 * A tube, a batten, a bar.
 *
 * @param lengthMm how long it is
 * @param kerfMm what a cut takes away
 * @param trimMm what is cut off each end before it is used
 * @param terms price, mass of a metre, how many
 */
public record Bar(double lengthMm, double kerfMm, double trimMm, Terms terms) implements Stock {

    /**
     * Checks the sizes.
     *
     * @param lengthMm above twice the trim
     * @param kerfMm 0 or more
     * @param trimMm 0 or more
     * @param terms price, mass, how many
     * @throws IllegalArgumentException if nothing of the bar is left, or a size is not finite
     */
    public Bar {
        if (!(kerfMm >= 0 && trimMm >= 0 && lengthMm > 2 * trimMm && Double.isFinite(lengthMm + kerfMm))) {
            throw new IllegalArgumentException(
                    "no bar is " + lengthMm + " mm long with " + trimMm + " mm off each end and a kerf of " + kerfMm);
        }
    }

    /** {@inheritDoc} */
    @Override
    public double marginMm() {
        return trimMm;
    }

    /**
     * What can be used of the length.
     *
     * @return the length less both trims
     */
    public double usableLengthMm() {
        return lengthMm - 2 * trimMm;
    }
}
