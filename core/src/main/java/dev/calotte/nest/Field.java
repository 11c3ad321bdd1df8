package dev.calotte.nest;

import dev.calotte.stock.Roll;
import dev.calotte.stock.Sheet;
import dev.calotte.stock.Stock;

/**
 * The part of a stock that may be covered, from its own origin.
 *
 * @param stock the number of the stock
 * @param length along it; infinite for an endless roll
 * @param width across it
 * @param margin what surrounds it
 * @param isRoll whether only as much is taken as is needed
 */
record Field(int stock, double length, double width, double margin, boolean isRoll) {

    static Field of(int number, Stock stock) {
        if (stock instanceof Sheet sheet) {
            return new Field(number, sheet.usableLengthMm(), sheet.usableWidthMm(), sheet.marginMm(), false);
        }
        if (stock instanceof Roll roll) {
            double length = roll.lengthMm().orElse(Double.POSITIVE_INFINITY) - 2 * roll.marginMm();
            return new Field(number, length, roll.usableWidthMm(), roll.marginMm(), true);
        }
        throw new IllegalArgumentException("parts are laid on sheets and rolls, not on " + stock);
    }
}
