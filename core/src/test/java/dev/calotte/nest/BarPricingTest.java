package dev.calotte.nest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.stock.Bar;
import dev.calotte.testing.Cases;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** What a pattern may be worth, and which are cut of the bars at hand, by hand and by trying all. */
class BarPricingTest {

    /** More than can be tried: every choice of 24 lengths goes on the bar, and no sum promises too little. */
    @Test
    void partsThatAllGoOnABarAreWorthNoMoreThanAllTogether() {
        List<Cut> cuts = new ArrayList<>();
        for (int kind = 0; kind < 24; kind++) {
            cuts.add(new Cut("S" + kind, 200.5 + kind, 1));
        }
        BarLengths lengths = BarLengths.of(cuts);
        double all = cuts.stream().mapToDouble(Cut::lengthMm).sum();
        double[] prices = prices(lengths);
        assertThat(pricing(lengths, prices, 20_000).bound(BarPlanTest.bar(20_000, 0)))
                .isCloseTo(all, within(1e-6));
    }

    /** By hand: lengths are multiples of three, a bar of 20,000 is not; the grid is a millimetre, and a part loses less. */
    @Test
    void whatCouldBeWorthMostIsKnownToAGridWhereTooMuchWouldHaveToBeTried() {
        List<Cut> cuts = new ArrayList<>();
        for (int kind = 0; kind < 24; kind++) {
            cuts.add(new Cut("S" + kind, 600 + 3 * kind, 40));
        }
        BarLengths lengths = BarLengths.of(cuts);
        BarPricing pricing = pricing(lengths, prices(lengths), 20_000);
        assertThat(pricing.worth()).isBetween(19_000.0, 19_998.0);
        assertThat(pricing.bound(BarPlanTest.bar(20_000, 0))).isBetween(19_998.0, 20_000.0 + 34);
    }

    /** What a pattern may be worth at most, where the search for it was given up, is no less than the best. */
    @Test
    void worthsAreBounded() {
        Cases.each(20, (random, size) -> {
            List<Cut> cuts = BarPlanTest.random(random, 40, 300);
            BarLengths lengths = BarLengths.of(cuts);
            double[] prices = random.doubles(lengths.count(), 0.1, 0.3).toArray();
            Bar bar = BarPlanTest.bar(1000 + 100 * size, 3);
            BarPricing pricing = BarPricing.of(lengths, lengths.need(), prices, bar, 0);
            double room = bar.usableLengthMm() + 3;
            double worth = 0;
            for (int kind = 0; kind < lengths.count(); kind++) {
                room -= pricing.best()[kind] * (lengths.lengthMm(kind) + 3);
                worth += pricing.best()[kind] * prices[kind];
                assertThat(pricing.best()[kind]).isLessThanOrEqualTo((int) lengths.need()[kind]);
            }
            assertThat(room).isGreaterThanOrEqualTo(-1e-6);
            assertThat(worth).isCloseTo(pricing.worth(), within(1e-9));
            assertThat(pricing.bound(bar)).isBetween(worth - 1e-9, 1.2 * worth);
        });
    }

    private static double[] prices(BarLengths lengths) {
        double[] prices = new double[lengths.count()];
        Arrays.setAll(prices, lengths::lengthMm);
        return prices;
    }

    private static BarPricing pricing(BarLengths lengths, double[] prices, double bar) {
        return BarPricing.of(lengths, lengths.need(), prices, BarPlanTest.bar(bar, 0), 0);
    }

    /** As many as are needed at least, of each stock no more than there are: by trying all numbers of bars and parts. */
    @Test
    void barsAtHandAreMixedAtTheLeastPrice() {
        Cases.each(33, (random, size) -> {
            List<Cut> cuts = BarPlanTest.random(random, 1 + size % 3, 90);
            List<Bar> bars = List.of(
                    BarPlanTest.priced(100, 5 + random.nextInt(4), OptionalInt.of(1 + random.nextInt(3))),
                    BarPlanTest.priced(150, 8 + random.nextInt(4), OptionalInt.of(1 + random.nextInt(3))));
            List<Double> parts = new ArrayList<>();
            cuts.forEach(cut -> parts.addAll(Collections.nCopies(cut.count(), cut.lengthMm())));
            double least = cheapest(bars, parts);
            for (int many : new int[] {4000, 0}) {
                BarMix.Mix mix = new BarMix(bars, BarLengths.of(cuts), many).solve();
                assertThat(mix.bound()).isLessThanOrEqualTo(least + 1e-6);
                if (many > 0) {
                    assertThat(mix.numbers().found()).isEqualTo(least < Double.POSITIVE_INFINITY);
                }
                if (mix.numbers().found()) {
                    assertThat(mix.numbers().cost()).isBetween(least - 1e-6, many > 0 ? least + 1e-6 : 2 * least);
                }
            }
        });
    }

    private static double cheapest(List<Bar> bars, List<Double> parts) {
        double least = Double.POSITIVE_INFINITY;
        for (int a = 0; a <= bars.get(0).terms().have().orElseThrow(); a++) {
            for (int b = 0; b <= bars.get(1).terms().have().orElseThrow(); b++) {
                List<Double> rooms =
                        new ArrayList<>(Collections.nCopies(a, bars.get(0).lengthMm()));
                rooms.addAll(Collections.nCopies(b, bars.get(1).lengthMm()));
                if (hold(rooms, parts)) {
                    least = Math.min(least, a * BarPrices.cost(bars, 0) + b * BarPrices.cost(bars, 1));
                }
            }
        }
        return least;
    }

    private static boolean hold(List<Double> rooms, List<Double> parts) {
        if (parts.isEmpty()) {
            return true;
        }
        for (int bar = 0; bar < rooms.size(); bar++) {
            if (rooms.get(bar) >= parts.get(0)) {
                List<Double> next = new ArrayList<>(rooms);
                next.set(bar, next.get(bar) - parts.get(0));
                if (hold(next, parts.subList(1, parts.size()))) {
                    return true;
                }
            }
        }
        return false;
    }
}
