package dev.calotte.nest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.stock.Bar;
import dev.calotte.stock.Terms;
import dev.calotte.testing.Cases;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** What can be cut from a bar, against trying everything. */
class BarPatternsTest {

    private static final Bar BAR = new Bar(110, 2, 5, Terms.OPEN);

    private static List<Cut> cuts(Random random, int kinds) {
        List<Cut> cuts = new ArrayList<>();
        for (int kind = 0; kind < kinds; kind++) {
            cuts.add(new Cut("S" + kind, 20 + 7 * kind + random.nextInt(6), 1 + random.nextInt(3)));
        }
        return cuts;
    }

    private static boolean fits(BarLengths lengths, int[] pattern) {
        int parts = Arrays.stream(pattern).sum();
        double taken = 2.0 * Math.max(0, parts - 1);
        for (int kind = 0; kind < pattern.length; kind++) {
            taken += pattern[kind] * lengths.lengthMm(kind);
        }
        return taken <= 100;
    }

    /** All that can be cut from a bar of what is needed. */
    private static List<int[]> all(BarLengths lengths) {
        List<int[]> all = new ArrayList<>();
        all.add(new int[lengths.count()]);
        for (int kind = 0; kind < lengths.count(); kind++) {
            for (int[] before : List.copyOf(all)) {
                for (int n = 1; n <= lengths.need()[kind]; n++) {
                    int[] more = before.clone();
                    more[kind] = n;
                    all.add(more);
                }
            }
        }
        all.removeIf(pattern -> !fits(lengths, pattern));
        return all;
    }

    private static boolean isWhole(BarLengths lengths, int[] pattern) {
        for (int kind = 0; kind < pattern.length; kind++) {
            int[] more = pattern.clone();
            more[kind]++;
            if (more[kind] <= lengths.need()[kind] && fits(lengths, more)) {
                return false;
            }
        }
        return true;
    }

    @Test
    void patternsAreAllToWhichNothingCanBeAdded() {
        Cases.each(40, (random, size) -> {
            BarLengths lengths = BarLengths.of(cuts(random, 1 + size % 4));
            BarPatterns patterns = BarPatterns.of(List.of(BAR), lengths, 1000);
            assertThat(patterns.complete()).isTrue();
            TreeSet<String> found = new TreeSet<>();
            for (int column = 0; column < patterns.columns().count(); column++) {
                found.add(Arrays.toString(patterns.columns().parts(column)));
            }
            assertThat(found).hasSize(patterns.columns().count());
            assertThat(found)
                    .containsExactlyInAnyOrderElementsOf(all(lengths).stream()
                            .filter(pattern -> isWhole(lengths, pattern))
                            .map(Arrays::toString)
                            .toList());
            int count = patterns.columns().count();
            assertThat(BarPatterns.of(List.of(BAR), lengths, count).complete()).isTrue();
            assertThat(BarPatterns.of(List.of(BAR), lengths, count - 1).complete())
                    .isFalse();
            assertThat(BarPatterns.of(List.of(BAR), lengths, count - 1)
                            .columns()
                            .count())
                    .isEqualTo(count - 1);
        });
    }

    @Test
    void thePatternThatIsWorthMostIsFound() {
        Cases.each(60, (random, size) -> {
            BarLengths lengths = BarLengths.of(cuts(random, 1 + size % 4));
            double[] prices = random.doubles(lengths.count(), -0.2, 1).toArray();
            double most = all(lengths).stream()
                    .mapToDouble(pattern -> worth(pattern, prices))
                    .max()
                    .orElseThrow();
            BarPricing pricing = BarPricing.of(lengths, lengths.need(), prices, BAR, most - 1e-9);
            assertThat(pricing.worth()).isCloseTo(most, within(1e-12));
            assertThat(worth(pricing.best(), prices)).isCloseTo(most, within(1e-12));
            assertThat(fits(lengths, pricing.best())).isTrue();
            assertThat(pricing.isWorthMore()).isTrue();
            assertThat(pricing.bound(BAR)).isCloseTo(most, within(1e-12));
            assertThat(BarPricing.of(lengths, lengths.need(), prices, BAR, most).isWorthMore())
                    .isFalse();
        });
    }

    private static double worth(int[] pattern, double[] prices) {
        double worth = 0;
        for (int kind = 0; kind < pattern.length; kind++) {
            worth += pattern[kind] * prices[kind];
        }
        return worth;
    }

    /** Lengths that differ by rounding are one, the longest first; each keeps its marks. */
    @Test
    void lengthsAreSortedAndEqualOnesCountTogether() {
        BarLengths lengths = BarLengths.of(List.of(
                new Cut("S1", 300, 2), new Cut("S2", 400, 1), new Cut("S3", 300 + 9e-7, 3), new Cut("S4", 299.99, 1)));
        assertThat(lengths.count()).isEqualTo(3);
        assertThat(lengths.lengthMm(0)).isEqualTo(400);
        assertThat(lengths.lengthMm(1)).isCloseTo(300, within(1e-6));
        assertThat(lengths.lengthMm(2)).isEqualTo(299.99);
        assertThat(lengths.need()).containsExactly(1, 5, 1);
        assertThat(lengths.marks(1)).extracting(Cut::mark).containsExactlyInAnyOrder("S1", "S1", "S3", "S3", "S3");
    }
}
