package dev.calotte.nest;

import dev.calotte.stock.Bar;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Finds the pattern of a bar that is worth most at given prices: a knapsack with as many of each length as are needed,
 * by branch and bound in the order of worth for the length.
 */
final class BarPricing {

    private final BarLengths lengths;
    private final double[] need;
    private final double[] prices;
    private final double kerf;
    private final List<Integer> order = new ArrayList<>();
    private final int[] yield;
    private int[] best;
    private double most;

    private BarPricing(BarLengths lengths, double[] prices, double kerf) {
        this.lengths = lengths;
        this.need = lengths.need();
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

    /** How many of each length; its worth is that of the prices. */
    static int[] best(BarLengths lengths, double[] prices, Bar bar) {
        BarPricing pricing = new BarPricing(lengths, prices, bar.kerfMm());
        pricing.search(0, BarPatterns.room(bar), 0);
        return pricing.best;
    }

    private double size(int kind) {
        return lengths.lengthMm(kind) + kerf;
    }

    private double density(int kind) {
        return prices[kind] / size(kind);
    }

    private void search(int place, double room, double worth) {
        if (worth > most) {
            most = worth;
            best = yield.clone();
        }
        if (place == order.size() || worth + room * density(order.get(place)) <= most * (1 + 1e-12)) {
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
