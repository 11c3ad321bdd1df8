package dev.calotte.nest;

import dev.calotte.stock.Outline;
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
    private final boolean bought;
    private final Measure measure;

    Charges(Kinds kinds, List<Stock> stocks) {
        this.kinds = kinds;
        this.stocks = stocks;
        this.bought = !stocks.stream().allMatch(Charges::isGiven);
        this.measure = sort();
    }

    private Measure sort() {
        List<Stock> counted = stocks.stream().filter(stock -> !isFree(stock)).toList();
        if (bought && stocks.stream().allMatch(stock -> stock.terms().price().isPresent())) {
            return Measure.PRICE;
        }
        if (counted.size() > 1) {
            return Measure.AREA_MM2;
        }
        return counted.get(0) instanceof Roll ? Measure.LENGTH_MM : Measure.PIECES;
    }

    /** What is at hand and costs nothing does not count beside what is bought; alone it does. */
    private boolean isFree(Stock stock) {
        return bought && isGiven(stock);
    }

    private static boolean isGiven(Stock stock) {
        return stock instanceof Outline && stock.terms().price().orElse(0) == 0;
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

    Stock stock(Field field) {
        return stocks.get(field.stock());
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
            case AREA_MM2 -> isFree(from) ? 0 : area(from);
            case PIECES, LENGTH_MM -> isFree(from) ? 0 : 1;
        };
    }

    /** Of one piece, or of a millimetre of roll. */
    private static double area(Stock stock) {
        if (stock instanceof Outline outline) {
            return outline.border().area();
        }
        return stock instanceof Sheet s ? s.lengthMm() * s.widthMm() : ((Roll) stock).widthMm();
    }

    /** What a sheet or a length of roll costs. */
    double cost(int stock, CutSheet sheet) {
        return rate(stock) * (sheet.stock() instanceof Roll ? sheet.lengthMm() : 1);
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
