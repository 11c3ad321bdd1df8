package dev.calotte.choose;

import dev.calotte.nest.CutPlan;
import dev.calotte.nest.Measure;
import dev.calotte.stock.Roll;
import dev.calotte.stock.Stock;
import java.util.List;

/**
 * In what the stock of a cover is reckoned: sheets are counted where there is only one sort, whatever they cost, and a
 * roll is measured; several stocks are compared by price, or by area.
 *
 * @param measure pieces, length, price or area
 */
record Spending(Measure measure) {

    static Spending of(List<Stock> stocks, CutPlan plan) {
        if (stocks.size() > 1) {
            return new Spending(plan.goal().measure());
        }
        return new Spending(stocks.get(0) instanceof Roll ? Measure.LENGTH_MM : Measure.PIECES);
    }

    double of(CutPlan plan) {
        boolean reckoned = measure == Measure.PIECES || measure == Measure.LENGTH_MM;
        return reckoned ? new Supply(measure, 1).usedBy(plan) : plan.goal().reached();
    }
}
