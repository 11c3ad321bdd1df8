package dev.calotte.stock;

/**
 * A rectangular sheet. A grain runs along its length.
 *
 * @param lengthMm along the grain
 * @param widthMm across the grain
 * @param marginMm what is left unused along every edge
 * @param terms price, mass of a square metre, how many
 */
public record Sheet(double lengthMm, double widthMm, double marginMm, Terms terms) implements Stock {

    /**
     * Checks the sizes.
     *
     * @param lengthMm above twice the margin
     * @param widthMm above twice the margin
     * @param marginMm 0 or more
     * @param terms price, mass, how many
     * @throws IllegalArgumentException if the margins use up the sheet, or a size is not finite
     */
    public Sheet {
        if (!(marginMm >= 0 && Math.min(lengthMm, widthMm) > 2 * marginMm && Double.isFinite(lengthMm + widthMm))) {
            throw new IllegalArgumentException(
                    "no sheet is " + lengthMm + " by " + widthMm + " mm with a margin of " + marginMm);
        }
    }

    /**
     * What can be used of the length.
     *
     * @return the length less both margins
     */
    public double usableLengthMm() {
        return lengthMm - 2 * marginMm;
    }

    /**
     * What can be used of the width.
     *
     * @return the width less both margins
     */
    public double usableWidthMm() {
        return widthMm - 2 * marginMm;
    }
}
