package dev.calotte.nest;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.BitSet;

/**
 * How often each pattern is used, in whole numbers, at the least cost: branch and bound over the linear programme. It
 * branches on how often one pattern is used. The least cost is convex in that number, so the numbers are tried outwards
 * from the one that the linear programme wants, on each side until the bound forbids it.
 */
final class IntegerMix {

    private static final double ROUNDING = 1e-7;

    /** Costs that are whole multiples of this, such as cents, let a bound be rounded up. */
    private static final int DECIMALS = 4;

    private static final int LEAST = 60;

    /** Numbers of columns that programmes look at, of which a core does some hundred millions a second. */
    private static final long WORK = 400_000_000;

    private final Columns columns;
    private final double grid;
    private final int most;
    private int nodes;
    private long work;
    private final int[] fixed;
    private final BitSet closed = new BitSet();
    private int[] best;
    private double bestCost = Double.POSITIVE_INFINITY;
    private double bound;

    private IntegerMix(Columns columns, int nodes) {
        this.columns = columns;
        this.grid = grid(columns);
        this.most = nodes;
        this.fixed = new int[columns.count()];
    }

    /**
     * Searches.
     *
     * @param columns the patterns
     * @param need how many parts of each kind
     * @param have how many pieces of each stock, infinite if as many as need be
     * @param nodes how many linear programmes may be solved
     */
    static IntegerMix of(Columns columns, double[] need, double[] have, int nodes) {
        return of(columns, new Amounts(need, have), nodes, null);
    }

    /** Searches for what is better than the numbers at hand, if there are any. */
    static IntegerMix of(Columns columns, Amounts amounts, int nodes, int[] start) {
        IntegerMix mix = new IntegerMix(columns, nodes);
        double cap = mix.relax(amounts.need, amounts.have);
        if (start != null) {
            mix.best = start.clone();
            mix.bestCost = 0;
            for (int j = 0; j < start.length; j++) {
                mix.bestCost += start[j] * columns.cost(j);
            }
        }
        mix.search(amounts.need, amounts.have, 0);
        if (!mix.tired()) {
            mix.bound = Math.max(mix.bound, Math.min(mix.bestCost, cap));
        }
        return mix;
    }

    /** What is needed of each kind, and how much there is of each stock. */
    static final class Amounts {

        private final double[] need;
        private final double[] have;

        Amounts(double[] need, double[] have) {
            this.need = need;
            this.have = have;
        }
    }

    /** The largest number of which every cost is a multiple, 0 if there is none. */
    private static double grid(Columns columns) {
        BigInteger common = BigInteger.ZERO;
        for (int j = 0; j < columns.count(); j++) {
            BigDecimal cost = BigDecimal.valueOf(columns.cost(j)).movePointRight(DECIMALS);
            BigDecimal whole = cost.setScale(0, RoundingMode.HALF_EVEN);
            if (cost.compareTo(whole) != 0) {
                return 0;
            }
            common = common.gcd(whole.toBigInteger());
        }
        return new BigDecimal(common).movePointLeft(DECIMALS).doubleValue();
    }

    /** A cost that no whole numbers undercut if nothing undercuts this one. */
    double raised(double cost) {
        return grid > 0 ? Math.ceil(cost / grid - ROUNDING) * grid : cost;
    }

    /**
     * Bounds the cost, and closes all patterns that would cost more beyond the bound than one of the dearest does; returns
     * what every plan costs that uses one of them.
     */
    private double relax(double[] need, double[] have) {
        Simplex simplex = new Simplex(columns, need, have, closed);
        simplex.minimise();
        bound = simplex.feasible() ? raised(simplex.cost()) : Double.POSITIVE_INFINITY;
        double[] prices = simplex.prices();
        for (int j = 0; j < columns.count(); j++) {
            double beyond = columns.cost(j);
            for (int row = 0; row < prices.length; row++) {
                beyond -= prices[row] * columns.column(j)[row];
            }
            closed.set(j, simplex.feasible() && beyond > columns.dearest());
        }
        return closed.isEmpty() ? Double.POSITIVE_INFINITY : raised(simplex.cost() + columns.dearest());
    }

    private boolean enough() {
        return bestCost <= bound * (1 + ROUNDING) || tired();
    }

    /** A programme takes the longer the more patterns and kinds there are. */
    private boolean tired() {
        return nodes >= most || (nodes >= LEAST && work >= WORK);
    }

    /** Returns whether something better than the best was still possible here before it was searched. */
    private boolean search(double[] need, double[] have, double spent) {
        nodes++;
        Simplex simplex = new Simplex(columns, need, have, closed);
        simplex.minimise();
        work += simplex.work();
        if (!simplex.feasible() || raised(spent + simplex.cost()) >= bestCost * (1 - ROUNDING)) {
            return false;
        }
        double[] uses = simplex.uses();
        int chosen = mostFractional(uses);
        if (chosen < 0) {
            keep(uses, spent + simplex.cost());
        } else {
            branch(need, have, spent, chosen, uses[chosen]);
        }
        return true;
    }

    private static int mostFractional(double[] uses) {
        int chosen = -1;
        double most = 0;
        for (int j = 0; j < uses.length; j++) {
            double part = uses[j] - Math.floor(uses[j]);
            // those nearly used once more are decided first; so the first descent ends in a good plan
            if (part > ROUNDING && part < 1 - ROUNDING && part > most) {
                chosen = j;
                most = part;
            }
        }
        return chosen;
    }

    private void keep(double[] uses, double cost) {
        best = fixed.clone();
        for (int j = 0; j < uses.length; j++) {
            best[j] += (int) Math.round(uses[j]);
        }
        bestCost = cost;
    }

    private void branch(double[] need, double[] have, double spent, int column, double wanted) {
        closed.set(column);
        int above = (int) Math.ceil(wanted);
        int below = above - 1;
        boolean up = true;
        boolean down = true;
        while ((up || down) && !enough()) {
            if (up) {
                up = fix(need, have, spent, column, above++);
            }
            if (down && !enough()) {
                down = below >= 0 && fix(need, have, spent, column, below--);
            }
        }
        fixed[column] = 0;
        closed.clear(column);
    }

    private boolean fix(double[] need, double[] have, double spent, int column, int times) {
        fixed[column] = times;
        double[] rest = need.clone();
        for (int k = 0; k < rest.length; k++) {
            rest[k] = Math.max(0, rest[k] - times * (double) columns.parts(column)[k]);
        }
        double[] left = have.clone();
        left[columns.stock(column)] -= times;
        return left[columns.stock(column)] >= 0 && search(rest, left, spent + times * columns.cost(column));
    }

    /** Whether whole numbers were found at all. */
    boolean found() {
        return best != null;
    }

    /** How often each column is used. */
    int[] uses() {
        return best.clone();
    }

    double cost() {
        return bestCost;
    }

    /** No choice of these columns costs less; infinite if none suffices. */
    double bound() {
        return bound;
    }
}
