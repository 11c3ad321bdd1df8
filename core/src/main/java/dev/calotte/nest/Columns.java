package dev.calotte.nest;

import java.util.ArrayList;
import java.util.List;

/**
 * Patterns as the columns of a programme: how many parts of each kind one piece of stock parts, what it costs, and
 * which stock it is. The first rows are kinds, of which enough must be cut; then come stocks, of which no more than there
 * are may be used.
 */
final class Columns implements Programme {

    private final int kinds;
    private final int stocks;
    private final List<double[]> rows = new ArrayList<>();
    private final List<int[]> partsOf = new ArrayList<>();
    private final List<Double> costs = new ArrayList<>();
    private final List<Integer> stockOf = new ArrayList<>();
    private double dearest;

    Columns(int kinds, int stocks) {
        this.kinds = kinds;
        this.stocks = stocks;
    }

    /** Adds a pattern; the array is kept. */
    void add(int stock, int[] parts, double cost) {
        double[] column = new double[kinds + stocks];
        for (int k = 0; k < kinds; k++) {
            column[k] = parts[k];
        }
        column[kinds + stock] = 1;
        rows.add(column);
        partsOf.add(parts);
        costs.add(cost);
        dearest = Math.max(dearest, cost);
        stockOf.add(stock);
    }

    @Override
    public int count() {
        return rows.size();
    }

    @Override
    public double[] column(int column) {
        return rows.get(column);
    }

    int[] parts(int column) {
        return partsOf.get(column);
    }

    @Override
    public double cost(int column) {
        return costs.get(column);
    }

    int stock(int column) {
        return stockOf.get(column);
    }

    @Override
    public double dearest() {
        return dearest;
    }
}
