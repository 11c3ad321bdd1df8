package dev.calotte.nest;

import dev.calotte.stock.Outline;
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
 * @param walls what may not be covered inside it, the margins of an irregular outline included
 */
record Field(int stock, double length, double width, double margin, boolean isRoll, Walls walls) {

    Field(int stock, double length, double width, double margin, boolean isRoll) {
        this(stock, length, width, margin, isRoll, Walls.NONE);
    }

    static Field of(int number, Stock stock) {
        if (stock instanceof Sheet sheet) {
            return new Field(number, sheet.usableLengthMm(), sheet.usableWidthMm(), sheet.marginMm(), false);
        }
        if (stock instanceof Roll roll) {
            double length = roll.lengthMm().orElse(Double.POSITIVE_INFINITY) - 2 * roll.marginMm();
            return new Field(number, length, roll.usableWidthMm(), roll.marginMm(), true);
        }
        if (stock instanceof Outline outline) {
            double m = outline.marginMm();
            double length = outline.lengthMm() - 2 * m;
            return new Field(number, length, outline.widthMm() - 2 * m, m, false, Walls.of(outline));
        }
        throw new IllegalArgumentException("parts are laid on sheets, rolls and outlines, not on " + stock);
    }

    boolean isIrregular() {
        return !walls.pieces().isEmpty();
    }
}
