package dev.calotte.compare;

import dev.calotte.choose.CoverFit;
import dev.calotte.choose.CoverPlan;
import dev.calotte.choose.PatternFit;
import dev.calotte.nest.CutSheet;
import dev.calotte.stock.Roll;
import dev.calotte.stock.Stock;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/**
 * What a cover takes of its stock.
 *
 * @param cover the name of the cover
 * @param sheets how many sheets, irregular outlines among them
 * @param rollMm how much of rolls
 * @param areaMm2 the area of both
 * @param partsMm2 the area of what is cut from them
 * @param price what it costs, if all stocks of the cover have a price
 */
public record StockUse(String cover, int sheets, double rollMm, double areaMm2, double partsMm2, OptionalDouble price) {

    /** Far below any part, far above rounding. */
    private static final double ROUNDING = 1e-9;

    static StockUse of(CoverPlan plan) {
        List<CutSheet> all = plan.plan().sheets();
        List<CutSheet> rolls =
                all.stream().filter(sheet -> sheet.stock() instanceof Roll).toList();
        boolean priced = plan.fit().stocks().stream()
                .allMatch(stock -> stock.terms().price().isPresent());
        return new StockUse(
                plan.fit().patterns().cover().name(),
                all.size() - rolls.size(),
                rolls.stream().mapToDouble(CutSheet::lengthMm).sum(),
                all.stream().mapToDouble(CutSheet::areaMm2).sum(),
                all.stream().mapToDouble(CutSheet::partsMm2).sum(),
                priced
                        ? OptionalDouble.of(
                                all.stream().mapToDouble(StockUse::price).sum())
                        : OptionalDouble.empty());
    }

    private static double price(CutSheet sheet) {
        double price = sheet.stock().terms().price().orElseThrow();
        return sheet.stock() instanceof Roll ? price * sheet.lengthMm() / 1000 : price;
    }

    /** The same for another area of parts, used as well; whole sheets where there are only sheets. */
    StockUse scaled(double otherPartsMm2) {
        int otherSheets = (int) Math.ceil(sheets * otherPartsMm2 / partsMm2 - ROUNDING);
        DoubleUnaryOperator bought =
                rollMm == 0 ? each -> each * otherSheets / sheets : each -> each * otherPartsMm2 / partsMm2;
        return new StockUse(
                cover,
                otherSheets,
                bought.applyAsDouble(rollMm),
                bought.applyAsDouble(areaMm2),
                otherPartsMm2,
                price.isPresent() ? OptionalDouble.of(bought.applyAsDouble(price.getAsDouble())) : price);
    }

    /** The area of all that is cut for a cover. */
    static double partsMm2(CoverFit fit) {
        return fit.fits().stream().mapToDouble(StockUse::partsMm2).sum();
    }

    private static double partsMm2(PatternFit fit) {
        return fit.pattern().count()
                * fit.pieces().stream()
                        .mapToDouble(piece -> piece.blank().area())
                        .sum();
    }

    /** What the pieces of a cover weigh, if a square metre of all its stocks weighs the same. */
    static OptionalDouble massKg(CoverFit fit) {
        List<Double> each = fit.stocks().stream()
                .map(Stock::terms)
                .map(terms -> terms.massKg().orElse(Double.NaN))
                .distinct()
                .toList();
        return each.size() == 1 && !each.get(0).isNaN()
                ? OptionalDouble.of(each.get(0) * partsMm2(fit) / 1e6)
                : OptionalDouble.empty();
    }

    /**
     * How much of the stock becomes parts.
     *
     * @return from 0 to 1
     */
    public double utilisation() {
        return partsMm2 / areaMm2;
    }
}
