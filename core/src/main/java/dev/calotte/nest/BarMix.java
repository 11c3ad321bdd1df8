package dev.calotte.nest;

import dev.calotte.stock.Bar;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * Which patterns are cut, and how often. Where there are few patterns the integer programme has them all; else it has
 * those that the linear programme asked for (P. C. Gilmore and R. E. Gomory, "A linear programming approach to the
 * cutting-stock problem", 1961), and its bound is that of the linear programme.
 */
final class BarMix {

    /** Beyond so many patterns only those are made that are asked for. */
    private static final int MANY = 4000;

    private static final int NODES = 4000;

    private final List<Bar> bars;
    private final BarLengths lengths;
    private final double[] need;
    private final double[] have;
    private final int many;

    BarMix(List<Bar> bars, BarLengths lengths) {
        this(bars, lengths, MANY);
    }

    BarMix(List<Bar> bars, BarLengths lengths, int many) {
        this.bars = bars;
        this.lengths = lengths;
        this.many = many;
        this.need = lengths.need();
        int parts = (int) Arrays.stream(need).sum();
        this.have = bars.stream()
                .mapToDouble(bar -> bar.terms().have().orElse(parts))
                .toArray();
    }

    /** The patterns and how often each is used. */
    Mix solve() {
        BarPatterns patterns = BarPatterns.of(bars, lengths, many);
        if (patterns.complete()) {
            IntegerMix mix = IntegerMix.of(patterns.columns(), need, have, NODES);
            return new Mix(patterns.columns(), mix, mix.bound(), Goal.Proof.ALL_PATTERNS);
        }
        Columns columns = singles();
        generate(columns);
        double bound = IntegerMix.of(columns, need, have, 1).bound();
        IntegerMix mix = IntegerMix.of(columns, need, have, NODES);
        return new Mix(columns, mix, bound, Goal.Proof.LINEAR_PROGRAMME);
    }

    /** For a start as many of one length as go on a bar. */
    private Columns singles() {
        Columns columns = new Columns(need.length, bars.size());
        for (int bar = 0; bar < bars.size(); bar++) {
            for (int kind = 0; kind < need.length; kind++) {
                double[] prices = new double[need.length];
                prices[kind] = 1;
                columns.add(bar, BarPricing.best(lengths, prices, bars.get(bar)), BarPrices.cost(bars, bar));
            }
        }
        return columns;
    }

    private void generate(Columns columns) {
        Simplex simplex = new Simplex(columns, need, have, new BitSet());
        int before;
        do {
            before = columns.count();
            simplex.minimise();
            double[] prices = simplex.prices();
            for (int bar = 0; bar < bars.size(); bar++) {
                price(columns, bar, prices);
            }
        } while (columns.count() > before);
    }

    private void price(Columns columns, int bar, double[] prices) {
        int[] yield = BarPricing.best(lengths, Arrays.copyOf(prices, need.length), bars.get(bar));
        double gain = prices[need.length + bar] - BarPrices.cost(bars, bar);
        for (int kind = 0; kind < yield.length; kind++) {
            gain += yield[kind] * prices[kind];
        }
        if (gain > 1e-7 * columns.dearest()) {
            columns.add(bar, yield, BarPrices.cost(bars, bar));
        }
    }

    /** Patterns, their numbers, and what no other numbers undercut. */
    record Mix(Columns columns, IntegerMix numbers, double bound, Goal.Proof proof) {}
}
