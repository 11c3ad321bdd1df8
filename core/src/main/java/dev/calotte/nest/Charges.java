package dev.calotte.nest;

import dev.calotte.stock.Roll;
import dev.calotte.stock.Sheet;
import dev.calotte.stock.Stock;
import dev.calotte.stock.Terms;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/** What sheets and lengths of roll cost, in one measure for all stocks. */
final class Charges {

    private static final Vector2D RIGHT = new Vector2D(1, 0);

    private final Kinds kinds;
    private final List<Stock> stocks;
    private final Measure measure;

    Charges(Kinds kinds, List<Stock> stocks) {
        this.kinds = kinds;
        this.stocks = stocks;
        this.measure = measure(stocks);
    }

    private static Measure measure(List<Stock> stocks) {
        if (stocks.stream().allMatch(stock -> stock.terms().price().isPresent())) {
            return Measure.PRICE;
        }
        if (stocks.size() > 1) {
            return Measure.AREA_MM2;
        }
        return stocks.get(0) instanceof Roll ? Measure.LENGTH_MM : Measure.PIECES;
    }

    /** The same stock at no known price. */
    static Stock open(Stock stock) {
        if (stock instanceof Sheet sheet) {
            return new Sheet(sheet.lengthMm(), sheet.widthMm(), sheet.marginMm(), Terms.OPEN);
        }
        if (stock instanceof Roll roll) {
            return new Roll(roll.widthMm(), roll.marginMm(), roll.lengthMm(), Terms.OPEN);
        }
        throw new IllegalArgumentException("parts are laid on sheets and rolls, not on " + stock);
    }

    Measure measure() {
        return measure;
    }

    /** Of a sheet, or of a millimetre of roll. */
    double rate(int stock) {
        Stock from = stocks.get(stock);
        double share = from instanceof Roll ? 1e-3 : 1;
        return switch (measure) {
            case PRICE -> from.terms().price().orElseThrow() * share;
            case AREA_MM2 -> from instanceof Sheet s ? s.lengthMm() * s.widthMm() : ((Roll) from).widthMm();
            case PIECES, LENGTH_MM -> 1;
        };
    }

    double cost(Filled filled) {
        double rate = rate(filled.field().stock());
        return filled.field().isRoll() ? rate * takenMm(filled) : rate;
    }

    double cost(List<Filled> all) {
        return all.stream().mapToDouble(this::cost).sum();
    }

    /** The length taken from a roll. */
    double takenMm(Filled filled) {
        double end = 0;
        for (Spot spot : filled.spots()) {
            end = Math.max(end, kinds.outline(spot).reach(RIGHT));
        }
        return end + 2 * filled.field().margin();
    }
}
