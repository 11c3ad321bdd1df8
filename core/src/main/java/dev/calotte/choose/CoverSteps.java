package dev.calotte.choose;

import dev.calotte.choose.StepSearch.Fineness;
import dev.calotte.choose.StockCurve.Step;
import dev.calotte.nest.CutPlan;
import dev.calotte.nest.CutSheet;
import dev.calotte.nest.Layout;
import dev.calotte.nest.SheetPlan;
import dev.calotte.parts.Parts;
import dev.calotte.pattern.Patterns;
import dev.calotte.problem.CalotteException;
import dev.calotte.stock.Roll;
import dev.calotte.stock.Stock;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The steps of a cover's stock, by first plans in other sizes. */
final class CoverSteps {

    /** What a page has the time for, and what is tried where work is spent on plans anyway. */
    private static final Fineness QUICK = new Fineness(6, 0.05, 2);

    private static final Fineness FINE = new Fineness(30, 0.02, 4);

    /** Of more pieces than this fewer sizes are tried; fewer than the least are of no use. */
    private static final int MANY = 200;

    private static final int LEAST_TRIALS = 3;

    private final CoverPlan plan;
    private final List<Stock> stocks;
    private final Resizing resizing;
    private final double spacingMm;
    private final Fineness fineness;
    private final Spending spending;

    CoverSteps(CoverPlan plan, Resizing resizing, Layout layout) {
        this.plan = plan;
        this.stocks = plan.fit().stocks();
        this.resizing = resizing;
        this.spending = Spending.of(stocks, plan.plan());
        this.spacingMm = layout.spacingMm();
        this.fineness = layout.steps() > 0 ? FINE : QUICK;
    }

    Optional<StockCurve> curve() {
        int pieces = plan.plan().sheets().stream()
                .map(CutSheet::parts)
                .mapToInt(List::size)
                .sum();
        int trials = Math.min(fineness.trials(), fineness.trials() * MANY / pieces);
        if (trials < LEAST_TRIALS) {
            return Optional.empty();
        }
        if (stocks.stream().anyMatch(Roll.class::isInstance)) {
            return Optional.of(samples());
        }
        Fineness limited = new Fineness(trials, fineness.pace(), fineness.halvings());
        StepSearch search = new StepSearch(resizing, this::at, spending.of(plan.plan()), limited);
        // how far the same will do goes first: the trials may not last for all steps downwards
        Optional<Step> larger = resizing.mayGrow() ? search.larger() : Optional.empty();
        return Optional.of(curve(search.smaller(), larger));
    }

    private StockCurve samples() {
        List<Step> smaller = Stream.of(0.95, 0.9)
                .limit(fineness.equals(QUICK) ? 1 : 2)
                .flatMap(factor -> at(resizing.times(factor)).stream())
                .filter(step -> step.spent() < spending.of(plan.plan()))
                .toList();
        return curve(smaller, resizing.mayGrow() ? at(resizing.times(1.05)) : Optional.empty());
    }

    private StockCurve curve(List<Step> smaller, Optional<Step> larger) {
        return new StockCurve(resizing.size().measure(), spending.measure(), spending.of(plan.plan()), smaller, larger);
    }

    private Optional<Step> at(double value) {
        try {
            Parts parts = resizing.parts(value);
            CoverFit fit = CoverFit.of(Patterns.of(parts, plan.fit().patterns().cover()), stocks);
            if (!fit.misfits().isEmpty()) {
                return Optional.empty();
            }
            CutPlan first = SheetPlan.glance(CoverPlan.pieces(fit), stocks, spacingMm);
            return Optional.of(new Step(value, spending.of(first), List.of()));
        } catch (CalotteException noSuchDome) {
            return Optional.empty();
        }
    }
}
