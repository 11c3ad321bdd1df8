package dev.calotte.nest;

import java.util.Arrays;
import java.util.BitSet;

/**
 * The revised simplex method with the inverse of the basis at hand (G. B. Dantzig, "Linear Programming and Extensions",
 * 1963, chapter 9), for few rows and many columns: the least cost at which enough of each kind is cut and of no stock
 * more is used than there is. Begins with artificial columns that cost more than all else; where nothing else costs anything, only they count. Where a step gains nothing
 * several times over, Bland's rule (1977) keeps it from going in circles.
 */
final class Simplex {

    private static final double ROUNDING = 1e-9;
    private static final double FORBIDDING = 1e6;
    private static final int PATIENCE = 40;

    /** So many steps without gain, even under Bland's rule, are rounding. */
    private static final int STUCK = 10_000;

    /** What a sum of products loses, as a part of its largest term. */
    private static final double LOSS = 1e-15;

    private final Programme columns;
    private final BitSet closed;
    private final int kinds;
    private final int size;
    private final double[] value;
    private final int[] basis;
    private final double[][] inverse;
    private final double dearest;
    private final double forbidding;
    private int idle;
    private long work;

    /** The programme for what is needed and what there is; closed columns are left out. */
    Simplex(Programme columns, double[] need, double[] have, BitSet closed) {
        this.columns = columns;
        this.closed = closed;
        this.kinds = need.length;
        this.size = need.length + have.length;
        this.value = Arrays.copyOf(need, size);
        System.arraycopy(have, 0, value, kinds, have.length);
        this.basis = new int[size];
        this.inverse = new double[size][size];
        this.dearest = columns.dearest();
        this.forbidding = dearest > 0 ? FORBIDDING * dearest : 1;
        for (int row = 0; row < size; row++) {
            basis[row] = row < kinds ? artificial(row) : spare(row);
            inverse[row][row] = 1;
        }
    }

    /** The column of what is cut beyond the need, or of what is left of a stock. */
    private static int spare(int row) {
        return -1 - row;
    }

    private int artificial(int row) {
        return -1 - size - row;
    }

    /** Goes on until no column that is there now would lower the cost. */
    void minimise() {
        double[] prices = prices();
        int entering = entering(prices);
        while (entering != Integer.MIN_VALUE && idle < STUCK) {
            double[] direction = direction(entering);
            int leaving = leaving(direction);
            if (leaving < 0) {
                throw new IllegalStateException("the cost has no bound");
            }
            exchange(leaving, entering, direction);
            prices = prices();
            entering = entering(prices);
        }
    }

    /** How many numbers of columns were looked at. */
    long work() {
        return work;
    }

    private double cost(int column) {
        if (column >= 0) {
            return columns.cost(column);
        }
        return column < -size ? forbidding : 0;
    }

    /** What one part more of each kind, or one piece more of each stock, would cost. */
    double[] prices() {
        double[] prices = new double[size];
        for (int row = 0; row < size; row++) {
            double cost = cost(basis[row]);
            for (int i = 0; cost != 0 && i < size; i++) {
                prices[i] += cost * inverse[row][i];
            }
        }
        return prices;
    }

    private int entering(double[] prices) {
        int best = Integer.MIN_VALUE;
        // with artificial columns in the basis prices are large, and their differences are rounded
        double most = Math.max(ROUNDING * (1 + dearest), LOSS * size * largest(prices));
        work += (long) columns.count() * size;
        for (int j = 0; j < columns.count(); j++) {
            double gain = closed.get(j) ? 0 : worth(prices, columns.column(j)) - columns.cost(j);
            if (gain > most) {
                best = j;
                most = idle > PATIENCE ? Double.POSITIVE_INFINITY : gain;
            }
        }
        for (int row = 0; row < size; row++) {
            double gain = row < kinds ? -prices[row] : prices[row];
            if (gain > most) {
                best = spare(row);
                most = idle > PATIENCE ? Double.POSITIVE_INFINITY : gain;
            }
        }
        return best;
    }

    private static double largest(double[] prices) {
        double largest = 0;
        for (double price : prices) {
            largest = Math.max(largest, Math.abs(price));
        }
        return largest;
    }

    private static double worth(double[] prices, double[] column) {
        double worth = 0;
        for (int i = 0; i < prices.length; i++) {
            worth += prices[i] * column[i];
        }
        return worth;
    }

    private double[] direction(int entering) {
        double[] direction = new double[size];
        for (int row = 0; row < size; row++) {
            if (entering >= 0) {
                direction[row] = worth(inverse[row], columns.column(entering));
            } else {
                int spare = -1 - entering;
                direction[row] = spare < kinds ? -inverse[row][spare] : inverse[row][spare];
            }
        }
        return direction;
    }

    private int leaving(double[] direction) {
        int leaving = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int row = 0; row < size; row++) {
            if (direction[row] > ROUNDING) {
                double ratio = value[row] / direction[row];
                boolean tied = leaving >= 0 && ratio <= least + ROUNDING && rank(basis[row]) < rank(basis[leaving]);
                if (ratio < least - ROUNDING || tied) {
                    leaving = row;
                    least = ratio;
                }
            }
        }
        return leaving;
    }

    /** Of several that may leave, artificial columns go first; under Bland's rule the first in the order of entering. */
    private int rank(int column) {
        return idle > PATIENCE && column < 0 ? columns.count() - column : column;
    }

    private void exchange(int leaving, int entering, double[] direction) {
        double step = Math.max(0, value[leaving] / direction[leaving]);
        idle = step > ROUNDING ? 0 : idle + 1;
        for (int i = 0; i < size; i++) {
            inverse[leaving][i] /= direction[leaving];
        }
        for (int row = 0; row < size; row++) {
            if (row != leaving) {
                value[row] -= step * direction[row];
                for (int i = 0; direction[row] != 0 && i < size; i++) {
                    inverse[row][i] -= direction[row] * inverse[leaving][i];
                }
            }
        }
        value[leaving] = step;
        basis[leaving] = entering;
    }

    /** Whether what there is suffices. */
    boolean feasible() {
        return feasible(ROUNDING);
    }

    /** Whether what there is suffices, but for a tolerance in each row. */
    boolean feasible(double tolerance) {
        for (int row = 0; row < size; row++) {
            if (basis[row] < -size && value[row] > tolerance) {
                return false;
            }
        }
        return true;
    }

    double cost() {
        double cost = 0;
        for (int row = 0; row < size; row++) {
            cost += cost(basis[row]) * value[row];
        }
        return cost;
    }

    /** How often each column is used. */
    double[] uses() {
        double[] uses = new double[columns.count()];
        for (int row = 0; row < size; row++) {
            if (basis[row] >= 0) {
                uses[basis[row]] = value[row];
            }
        }
        return uses;
    }
}
