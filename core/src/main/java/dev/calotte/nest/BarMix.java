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
    private static final int ROUNDS = 600;
    private static final int DIVE_ROUNDS = 12;
    private static final double ROUNDING = 1e-9;
    private static final double TOLERANCE = 1e-7;

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
        double bound = bound(generate(columns, need, have, ROUNDS));
        int[] start = dive(columns);
        IntegerMix mix = IntegerMix.of(columns, new IntegerMix.Amounts(need, have), NODES, start);
        return new Mix(columns, mix, mix.raised(bound), Goal.Proof.LINEAR_PROGRAMME);
    }

    /** For a start as many of one length as go on a bar. */
    private Columns singles() {
        Columns columns = new Columns(need.length, bars.size());
        for (int bar = 0; bar < bars.size(); bar++) {
            for (int kind = 0; kind < need.length; kind++) {
                double[] prices = new double[need.length];
                prices[kind] = 1;
                int[] yield =
                        BarPricing.of(lengths, need, prices, bars.get(bar), 0).best();
                columns.add(bar, yield, BarPrices.cost(bars, bar));
            }
        }
        return columns;
    }

    /** Adds patterns until none that is found would lower the cost, or so many times; returns the programme, solved. */
    private Simplex generate(Columns columns, double[] wanted, double[] there, int rounds) {
        Simplex simplex = new Simplex(columns, wanted, there, new BitSet());
        int before = -1;
        for (int round = 0; round < rounds && columns.count() > before; round++) {
            simplex.minimise();
            before = columns.count();
            double[] prices = simplex.prices();
            for (int bar = 0; bar < bars.size(); bar++) {
                BarPricing pricing = priced(bar, prices, wanted);
                if (pricing.isWorthMore()) {
                    columns.add(bar, pricing.best(), BarPrices.cost(bars, bar));
                }
            }
        }
        simplex.minimise();
        return simplex;
    }

    private BarPricing priced(int bar, double[] prices, double[] wanted) {
        double enough = BarPrices.cost(bars, bar) * (1 + TOLERANCE) - prices[need.length + bar];
        return BarPricing.of(lengths, wanted, Arrays.copyOf(prices, need.length), bars.get(bar), enough);
    }

    /**
     * What all plans cost at least. Where a pattern may be worth more than its cost, the prices divided by the largest
     * excess are still good for a bound (A. A. Farley, "A note on bounding a class of linear programming problems", 1990).
     */
    private double bound(Simplex simplex) {
        double[] prices = simplex.prices();
        double excess = 1;
        for (int bar = 0; bar < bars.size(); bar++) {
            double most = priced(bar, prices, need).bound(bars.get(bar)) + prices[need.length + bar];
            excess = Math.max(excess, BarPrices.cost(bars, bar) > 0 ? most / BarPrices.cost(bars, bar) : 1);
        }
        return simplex.feasible() ? simplex.cost() / excess : Double.POSITIVE_INFINITY;
    }

    /**
     * Fixes the whole numbers of the linear programme, or else one pattern that it uses most, again and again, with new
     * patterns for what is left each time; null if the bars run out.
     */
    private int[] dive(Columns columns) {
        double[] wanted = need.clone();
        double[] there = have.clone();
        int[] uses = {};
        while (Arrays.stream(wanted).sum() > 0) {
            Simplex simplex = generate(columns, wanted, there, DIVE_ROUNDS);
            if (!simplex.feasible()) {
                return null;
            }
            uses = Arrays.copyOf(uses, columns.count());
            double[] shares = simplex.uses();
            int most = 0;
            double whole = 0;
            for (int j = 0; j < shares.length; j++) {
                most = shares[j] > shares[most] ? j : most;
                whole += Math.floor(shares[j] + ROUNDING);
            }
            for (int j = 0; j < shares.length; j++) {
                int times = whole > 0 ? (int) Math.floor(shares[j] + ROUNDING) : j == most ? 1 : 0;
                uses[j] += times;
                take(columns, j, times, wanted, there);
            }
        }
        return Arrays.copyOf(uses, columns.count());
    }

    private static void take(Columns columns, int column, int times, double[] wanted, double[] there) {
        there[columns.stock(column)] -= times;
        for (int kind = 0; kind < wanted.length; kind++) {
            wanted[kind] = Math.max(0, wanted[kind] - times * (double) columns.parts(column)[kind]);
        }
    }

    /** Patterns, their numbers, and what no other numbers undercut. */
    record Mix(Columns columns, IntegerMix numbers, double bound, Goal.Proof proof) {}
}
