package dev.calotte.compare;

import dev.calotte.nest.BarPlan;
import dev.calotte.nest.Cut;
import dev.calotte.nest.CutBar;
import dev.calotte.stock.Bar;
import dev.calotte.stock.Terms;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What a frame takes of bars.
 *
 * @param count how many bars
 * @param lengthMm their length in all
 * @param utilisation how much of it becomes struts or rails, from 0 to 1
 * @param price what they cost, if all bars have a price
 * @param planned whether the cuts were planned; if not, it is an estimate that a plan may better
 */
public record BarUse(int count, double lengthMm, double utilisation, OptionalDouble price, boolean planned) {

    static BarUse of(BarPlan plan, List<Bar> stock) {
        List<Bar> used = plan.bars().stream().map(CutBar::bar).toList();
        boolean priced = stock.stream().allMatch(bar -> bar.terms().price().isPresent());
        return new BarUse(
                used.size(),
                used.stream().mapToDouble(Bar::lengthMm).sum(),
                plan.utilisation(),
                priced
                        ? OptionalDouble.of(used.stream()
                                .map(Bar::terms)
                                .mapToDouble(terms -> terms.price().orElseThrow())
                                .sum())
                        : OptionalDouble.empty(),
                true);
    }

    /** What the cuts weigh, if a metre of all bars weighs the same. */
    static OptionalDouble massKg(List<Cut> cuts, List<Bar> stock) {
        List<Double> each = stock.stream()
                .map(Bar::terms)
                .map((Terms terms) -> terms.massKg().orElse(Double.NaN))
                .distinct()
                .toList();
        double metres =
                cuts.stream().mapToDouble(cut -> cut.count() * cut.lengthMm()).sum() / 1000;
        return each.size() == 1 && !each.get(0).isNaN()
                ? OptionalDouble.of(each.get(0) * metres)
                : OptionalDouble.empty();
    }
}
