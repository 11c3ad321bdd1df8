package dev.calotte.choose;

import dev.calotte.choose.StepSearch.Fineness;
import dev.calotte.choose.StockCurve.Step;
import dev.calotte.choose.StockCurve.Yield;
import dev.calotte.dome.Size;
import dev.calotte.nest.BarPlan;
import dev.calotte.nest.Cut;
import dev.calotte.nest.Measure;
import dev.calotte.problem.CalotteException;
import dev.calotte.stock.Bar;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The steps of a frame's bars. A strut is longer or shorter by a fixed part of what the dome is, or nearly so: its length
 * in any size is drawn through two sizes, and each step found so is made for good in its own size.
 */
final class BarSteps {

    private static final Fineness PACES = new Fineness(60, 0.01, 12);

    /** Of more kinds a cut list takes longer than a page should. */
    private static final int MOST_KINDS = 24;

    /** Of more struts making the dome does. */
    private static final int MOST_STRUTS = 2000;

    private static final double OTHER = 0.9;
    private static final double ROUNDING_MM = 1e-6;
    private static final double ROUNDING = 1e-9;

    private final BarPlan plan;
    private final List<Bar> bars;
    private final Resizing resizing;
    private List<Cut> asked = List.of();
    private List<Cut> other = List.of();

    BarSteps(BarPlan plan, List<Bar> bars, Resizing resizing) {
        this.plan = plan;
        this.bars = List.copyOf(bars);
        this.resizing = resizing;
    }

    Optional<StockCurve> curve() {
        if (!draw()) {
            return Optional.empty();
        }
        StepSearch search = new StepSearch(resizing, this::drawn, spent(plan), PACES);
        List<Step> smaller = search.smaller().stream()
                .flatMap(step -> made(step, step.spent()).stream())
                .toList();
        Optional<Step> larger =
                resizing.mayGrow() ? search.larger().flatMap(step -> made(step, spent(plan))) : Optional.empty();
        return Optional.of(new StockCurve(resizing.size().measure(), measure(), spent(plan), smaller, larger));
    }

    /** Two sizes with the same kinds. */
    private boolean draw() {
        try {
            asked = BarNeeds.of(resizing.domes().apply(resizing.size()));
            int cuts = asked.stream().mapToInt(Cut::count).sum();
            if (asked.size() > MOST_KINDS || cuts > MOST_STRUTS) {
                return false;
            }
            other = BarNeeds.of(resizing.parts(resizing.size().value() * OTHER));
        } catch (CalotteException noSuchDome) {
            return false;
        }
        return asked.size() == other.size()
                && IntStream.range(0, asked.size())
                        .allMatch(i -> asked.get(i).mark().equals(other.get(i).mark())
                                && asked.get(i).count() == other.get(i).count());
    }

    private Measure measure() {
        return bars.size() == 1 ? Measure.PIECES : plan.goal().measure();
    }

    private double spent(BarPlan cut) {
        return bars.size() == 1 ? cut.bars().size() : cut.goal().reached();
    }

    private Optional<Step> drawn(double value) {
        double share = part(value);
        List<Cut> cuts = new ArrayList<>();
        for (int i = 0; i < asked.size(); i++) {
            double here = asked.get(i).lengthMm();
            double length = here + share * (other.get(i).lengthMm() - here);
            if (length <= 0) {
                return Optional.empty();
            }
            cuts.add(new Cut(asked.get(i).mark(), length, asked.get(i).count()));
        }
        return step(value, cuts);
    }

    /** How far a size lies from the asked one towards the other, as lengths go: areas by their roots. */
    private double part(double value) {
        double from = resizing.size().value();
        return resizing.size().measure() == Size.Measure.FLOOR_AREA
                ? (1 - Math.sqrt(value / from)) / (1 - Math.sqrt(OTHER))
                : (1 - value / from) / (1 - OTHER);
    }

    private Optional<Step> step(double value, List<Cut> cuts) {
        try {
            return Optional.of(new Step(value, spent(BarPlan.of(cuts, bars)), yields(cuts)));
        } catch (CalotteException tooLong) {
            return Optional.empty();
        }
    }

    /** The same step for the dome as it is made, one unit smaller if rounding spoils it. */
    private Optional<Step> made(Step drawn, double target) {
        for (double value : new double[] {drawn.size(), resizing.down(drawn.size() - resizing.unit() / 2)}) {
            Optional<Step> step = madeAt(value).filter(s -> s.spent() <= target * (1 + ROUNDING));
            if (step.isPresent()) {
                return step;
            }
        }
        return Optional.empty();
    }

    private Optional<Step> madeAt(double value) {
        try {
            return step(value, BarNeeds.of(resizing.parts(value)));
        } catch (CalotteException noSuchDome) {
            return Optional.empty();
        }
    }

    private List<Yield> yields(List<Cut> cuts) {
        List<Yield> yields = new ArrayList<>();
        for (int i = 0; i < Math.min(cuts.size(), asked.size()); i++) {
            for (Bar bar : bars) {
                int each = each(cuts.get(i), bar);
                if (each > each(asked.get(i), bar)) {
                    yields.add(new Yield(cuts.get(i).mark(), each, bar.lengthMm()));
                }
            }
        }
        return yields;
    }

    private static int each(Cut cut, Bar bar) {
        return (int) ((bar.usableLengthMm() + bar.kerfMm() + ROUNDING_MM) / (cut.lengthMm() + bar.kerfMm()));
    }
}
