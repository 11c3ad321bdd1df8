package dev.calotte.stock;

import java.util.OptionalDouble;

/**
 * Material from a roll. The grain, or nap, runs along it.
 *
 * @param widthMm across the roll
 * @param marginMm what is left unused along both edges and at both ends
 * @param lengthMm how long one roll is; endless if absent
 * @param terms price of a metre, mass of a square metre, how many rolls
 */
public record Roll(double widthMm, double marginMm, OptionalDouble lengthMm, Terms terms) implements Stock {

    /**
     * Checks the sizes.
     *
     * @param widthMm above twice the margin
     * @param marginMm 0 or more
     * @param lengthMm above twice the margin
     * @param terms price, mass, how many
     * @throws IllegalArgumentException if the margins use up the roll, or a size is not finite
     */
    public Roll {
        double length = lengthMm.orElse(Double.MAX_VALUE);
        if (!(marginMm >= 0 && Math.min(widthMm, length) > 2 * marginMm && Double.isFinite(widthMm))) {
            throw new IllegalArgumentException(
                    "no roll is " + widthMm + " mm wide with a margin of " + marginMm + " and " + lengthMm);
        }
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
