package dev.calotte.bill;

import java.util.OptionalDouble;

/**
 * One line of a bill.
 *
 * @param item what it is
 * @param mark its mark, the name of its cover, or the thread of a bolt; empty where there is one sort only
 * @param needed how much the dome takes, in pieces, or in metres of a roll
 * @param spare how much more is advised, in the same unit; whole pieces
 * @param lengthMm how long a piece is, where that is known; absent for a roll
 * @param widthMm how wide a sheet or roll is
 * @param areaMm2 the area of a sheet, of a piece of one, or of a metre of roll
 * @param priceEach of a piece, or of a metre of roll
 * @param massKgEach of a piece, or of a metre of roll, in kilograms
 */
public record BillLine(
        Item item,
        String mark,
        double needed,
        double spare,
        OptionalDouble lengthMm,
        OptionalDouble widthMm,
        OptionalDouble areaMm2,
        OptionalDouble priceEach,
        OptionalDouble massKgEach) {

    /** Pieces without more to say of them. */
    static BillLine pieces(Item item, String mark, double needed) {
        OptionalDouble unknown = OptionalDouble.empty();
        return new BillLine(item, mark, needed, 0, unknown, unknown, unknown, unknown, unknown);
    }

    BillLine ofLength(double mm) {
        return new BillLine(item, mark, needed, spare, OptionalDouble.of(mm), widthMm, areaMm2, priceEach, massKgEach);
    }

    BillLine ofArea(double mm2) {
        return new BillLine(
                item, mark, needed, spare, lengthMm, widthMm, OptionalDouble.of(mm2), priceEach, massKgEach);
    }

    BillLine ofWidth(double mm) {
        return new BillLine(item, mark, needed, spare, lengthMm, OptionalDouble.of(mm), areaMm2, priceEach, massKgEach);
    }

    BillLine spared(double other) {
        return new BillLine(item, mark, needed, other, lengthMm, widthMm, areaMm2, priceEach, massKgEach);
    }

    BillLine at(OptionalDouble price, OptionalDouble massKg) {
        return new BillLine(item, mark, needed, spare, lengthMm, widthMm, areaMm2, price, massKg);
    }

    /**
     * Needed and spare together.
     *
     * @return in pieces, or in metres of a roll
     */
    public double amount() {
        return needed + spare;
    }

    /**
     * All lengths together, spares included.
     *
     * @return in millimetres; of a roll what is taken from it; absent for what has no length
     */
    public OptionalDouble totalLengthMm() {
        if (item == Item.ROLL) {
            return OptionalDouble.of(amount() * 1000);
        }
        return lengthMm.isPresent() ? OptionalDouble.of(amount() * lengthMm.getAsDouble()) : lengthMm;
    }

    /**
     * All areas together, spares included.
     *
     * @return in square millimetres; absent for what has no area
     */
    public OptionalDouble totalAreaMm2() {
        return times(areaMm2);
    }

    /**
     * What it costs, spares included.
     *
     * @return in the currency of the stock's price; absent if that is not known
     */
    public OptionalDouble price() {
        return times(priceEach);
    }

    /**
     * What it weighs, spares included.
     *
     * @return in kilograms; absent if that is not known
     */
    public OptionalDouble massKg() {
        return times(massKgEach);
    }

    private OptionalDouble times(OptionalDouble each) {
        return each.isPresent() ? OptionalDouble.of(amount() * each.getAsDouble()) : each;
    }
}
