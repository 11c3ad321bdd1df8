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
 * @param reckoned whether all that is used counts; else what the plan says, where outlines that cost nothing do not
 */
record Spending(Measure measure, boolean reckoned) {

    static Spending of(List<Stock> stocks, CutPlan plan) {
        if (stocks.size() > 1) {
            return new Spending(plan.goal().measure(), false);
        }
        return new Spending(stocks.get(0) instanceof Roll ? Measure.LENGTH_MM : Measure.PIECES, true);
    }

    double of(CutPlan plan) {
        return reckoned ? new Supply(measure, 1).usedBy(plan) : plan.goal().reached();
    }
}
