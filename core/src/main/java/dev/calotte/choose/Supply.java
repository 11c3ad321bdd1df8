package dev.calotte.choose;

import dev.calotte.nest.CutPlan;
import dev.calotte.nest.CutSheet;
import dev.calotte.nest.Measure;

/**
 * How much there is of a stock.
 *
 * @param measure {@link Measure#PIECES} of sheets, {@link Measure#LENGTH_MM} of rolls
 * @param amount how many sheets, or how many millimetres of roll
 */
public record Supply(Measure measure, double amount) {

    /** What is so little too much is rounding. */
    private static final double ROUNDING = 1e-9;

    /**
     * Checks the amount.
     *
     * @param measure pieces or length
     * @param amount above 0; of pieces a whole number
     * @throws IllegalArgumentException if the measure is another one, or there is no such amount
     */
    public Supply {
        boolean pieces = measure == Measure.PIECES && amount == Math.rint(amount);
        if (!((pieces || measure == Measure.LENGTH_MM) && amount > 0 && Double.isFinite(amount))) {
            throw new IllegalArgumentException("no supply is " + amount + " in " + measure);
        }
    }

    /**
     * A number of sheets.
     *
     * @param count how many, 1 or more
     * @return the supply
     */
    public static Supply sheets(int count) {
        return new Supply(Measure.PIECES, count);
    }

    /**
     * A length of roll.
     *
     * @param mm how long, above 0
     * @return the supply
     */
    public static Supply roll(double mm) {
        return new Supply(Measure.LENGTH_MM, mm);
    }

    /**
     * How much a plan uses.
     *
     * @param plan sheets or lengths of roll
     * @return in the measure of this supply: the number of sheets, or the lengths taken from rolls, margins included
     */
    public double usedBy(CutPlan plan) {
        return measure == Measure.PIECES
                ? plan.sheets().size()
                : plan.sheets().stream().mapToDouble(CutSheet::lengthMm).sum();
    }

    /**
     * Whether so much is there.
     *
     * @param used in the measure of this supply
     * @return whether it is no more than the amount
     */
    public boolean holds(double used) {
        return used <= amount * (1 + ROUNDING);
    }
}
