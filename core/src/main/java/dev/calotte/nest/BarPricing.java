package dev.calotte.nest;

import dev.calotte.stock.Bar;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Finds the pattern of a bar that is worth most at given prices: a knapsack with as many of each length as are needed,
 * by branch and bound in the order of worth for the length. Where that takes too long the best so far has to do.
 */
final class BarPricing {

    private static final int NODES = 20_000;
    private static final int MOST_NODES = 200_000;

    private static final int GRID = 20_000;

    private final BarLengths lengths;
    private final double[] need;
    private final double[] prices;
    private final double kerf;
    private final List<Integer> order = new ArrayList<>();
    private final int[] yield;
    private int[] best;
    private double most;
    private double enough;
    private int nodesLeft = MOST_NODES;

    private BarPricing(BarLengths lengths, double[] need, double[] prices, double kerf) {
        this.lengths = lengths;
        this.need = need;
        this.prices = prices;
        this.kerf = kerf;
        this.yield = new int[need.length];
        this.best = new int[need.length];
        for (int kind = 0; kind < need.length; kind++) {
            if (prices[kind] > 0) {
                order.add(kind);
            }
        }
        order.sort(Comparator.comparingDouble(this::density).reversed());
    }

    /** Searches for the best pattern of a bar with no more than is needed of each length; longer for one worth enough. */
    static BarPricing of(BarLengths lengths, double[] need, double[] prices, Bar bar, double enough) {
        BarPricing pricing = new BarPricing(lengths, need, prices, bar.kerfMm());
        pricing.enough = enough;
        pricing.search(0, BarPatterns.room(bar), 0);
        return pricing;
    }

    /** How many of each length. */
    int[] best() {
        return best;
    }

    /** Whether that is worth more than was enough. */
    boolean isWorthMore() {
        return most > enough;
    }

    /** What the pattern is worth. */
    double worth() {
        return most;
    }

    /** No pattern of the bar is worth more than this. */
    double bound(Bar bar) {
        return nodesLeft > 0 ? most : coarseBound(BarPatterns.room(bar));
    }

    /** The best of all patterns if lengths were rounded down to a grid, by dynamic programming along it. */
    private double coarseBound(double room) {
        double[] most = new double[GRID + 1];
        for (int kind : order) {
            int size = (int) Math.floor(size(kind) / room * GRID);
            for (int copy = 0; copy < Math.min(need[kind], Math.floor(room / size(kind))); copy++) {
                for (int cell = GRID; cell >= size; cell--) {
                    most[cell] = Math.max(most[cell], most[cell - size] + prices[kind]);
                }
            }
        }
        return most[GRID];
    }

    private double size(int kind) {
        return lengths.lengthMm(kind) + kerf;
    }

    private double density(int kind) {
        return prices[kind] / size(kind);
    }

    private void search(int place, double room, double worth) {
        nodesLeft--;
        if (worth > most) {
            if (worth > enough && most <= enough) {
                nodesLeft = Math.min(nodesLeft, NODES);
            }
            most = worth;
            best = yield.clone();
        }
        if (place == order.size() || nodesLeft <= 0 || worth + room * density(order.get(place)) <= most * (1 + 1e-12)) {
            return;
        }
        int kind = order.get(place);
        for (int n = (int) Math.min(need[kind], Math.floor(room / size(kind))); n >= 0; n--) {
            yield[kind] = n;
            search(place + 1, room - n * size(kind), worth + n * prices[kind]);
        }
        yield[kind] = 0;
    }
}
