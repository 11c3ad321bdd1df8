package dev.calotte.nest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.testing.Cases;
import java.util.BitSet;
import org.junit.jupiter.api.Test;

class SimplexTest {

    private static Columns columns(int kinds, int stocks, int[]... parts) {
        Columns columns = new Columns(kinds, stocks);
        for (int[] pattern : parts) {
            columns.add(0, pattern, 1);
        }
        return columns;
    }

    private static Simplex solved(Columns columns, double[] need, double[] have) {
        Simplex simplex = new Simplex(columns, need, have, new BitSet());
        simplex.minimise();
        return simplex;
    }

    /** Computed by hand here: patterns (2, 0), (1, 1), (0, 2) for 3 and 4 parts take 3.5, each part half of one. */
    @Test
    void costPricesAndUsesOfASmallProgramme() {
        Columns columns = columns(2, 1, new int[] {2, 0}, new int[] {1, 1}, new int[] {0, 2});
        Simplex simplex = solved(columns, new double[] {3, 4}, new double[] {9});
        assertThat(simplex.cost()).isCloseTo(3.5, within(1e-12));
        assertThat(simplex.prices()[0]).isCloseTo(0.5, within(1e-12));
        assertThat(simplex.prices()[1]).isCloseTo(0.5, within(1e-12));
        assertThat(simplex.feasible()).isTrue();
        double[] uses = simplex.uses();
        assertThat(2 * uses[0] + uses[1]).isGreaterThanOrEqualTo(3 - 1e-12);
        assertThat(uses[1] + 2 * uses[2]).isGreaterThanOrEqualTo(4 - 1e-12);
        assertThat(solved(columns, new double[] {3, 4}, new double[] {3.4}).feasible())
                .isFalse();
        assertThat(solved(columns, new double[] {3, 4}, new double[] {3.5}).feasible())
                .isTrue();
    }

    /** Uses that suffice and prices that no pattern outdoes, worth the same, prove each other (duality). */
    @Test
    void usesAndPricesProveEachOther() {
        Cases.each(80, (random, size) -> {
            int kinds = 1 + size % 5;
            Columns columns = new Columns(kinds, 1);
            for (int j = 0; j < kinds + size; j++) {
                int[] parts = new int[kinds];
                parts[j % kinds] = 1;
                parts[random.nextInt(kinds)] += random.nextInt(4);
                columns.add(0, parts, 1 + random.nextInt(5));
            }
            double[] need = random.doubles(kinds, 1, 30).toArray();
            Simplex simplex = solved(columns, need, new double[] {1000});
            double[] prices = simplex.prices();
            double[] uses = simplex.uses();
            double worth = 0;
            double cost = 0;
            for (int kind = 0; kind < kinds; kind++) {
                double cut = 0;
                for (int j = 0; j < uses.length; j++) {
                    cut += uses[j] * columns.parts(j)[kind];
                }
                assertThat(cut).isGreaterThanOrEqualTo(need[kind] - 1e-9);
                assertThat(prices[kind]).isGreaterThanOrEqualTo(-1e-9);
                worth += need[kind] * prices[kind];
            }
            for (int j = 0; j < uses.length; j++) {
                double pattern = 0;
                for (int kind = 0; kind < kinds; kind++) {
                    pattern += columns.parts(j)[kind] * prices[kind];
                }
                assertThat(uses[j]).isGreaterThanOrEqualTo(0);
                assertThat(pattern).isLessThanOrEqualTo(columns.cost(j) + 1e-7);
                cost += uses[j] * columns.cost(j);
            }
            assertThat(simplex.cost()).isCloseTo(worth, within(1e-7)).isCloseTo(cost, within(1e-7));
        });
    }

    /** Computed by hand here: 3.5 rounds up to 4, since every pattern costs 1. */
    @Test
    void wholeNumbersRoundTheBoundUp() {
        Columns columns = columns(2, 1, new int[] {2, 0}, new int[] {1, 1}, new int[] {0, 2});
        IntegerMix mix = IntegerMix.of(columns, new double[] {3, 4}, new double[] {9}, 100);
        assertThat(mix.cost()).isCloseTo(4, within(1e-9));
        assertThat(mix.bound()).isCloseTo(4, within(1e-9));
        IntegerMix none = IntegerMix.of(columns, new double[] {3, 4}, new double[] {3}, 100);
        assertThat(none.found()).isFalse();
        assertThat(none.bound()).isInfinite();
    }

    /** The least cost by trying all numbers. */
    private static double least(Columns columns, double[] need, int column, double spent, double best) {
        boolean enough = true;
        for (double rest : need) {
            enough &= rest <= 0;
        }
        if (enough || spent >= best) {
            return enough ? Math.min(best, spent) : best;
        }
        if (column == columns.count()) {
            return best;
        }
        double least = best;
        double[] rest = need.clone();
        for (int n = 0; n <= 8; n++) {
            least = least(columns, rest, column + 1, spent + n * columns.cost(column), least);
            for (int kind = 0; kind < rest.length; kind++) {
                rest[kind] -= columns.parts(column)[kind];
            }
        }
        return least;
    }

    @Test
    void noWholeNumbersCostLess() {
        Cases.each(60, (random, size) -> {
            int kinds = 1 + size % 3;
            Columns columns = new Columns(kinds, 1);
            for (int j = 0; j < kinds + 3; j++) {
                int[] parts = new int[kinds];
                parts[j % kinds] = 1;
                parts[random.nextInt(kinds)] += random.nextInt(3);
                columns.add(0, parts, 1 + random.nextInt(40) / 10.0);
            }
            double[] need = random.ints(kinds, 1, 8).asDoubleStream().toArray();
            IntegerMix mix = IntegerMix.of(columns, need, new double[] {100}, 5000);
            double least = least(columns, need, 0, 0, 1000);
            assertThat(mix.cost()).isCloseTo(least, within(1e-6));
            assertThat(mix.bound()).isCloseTo(least, within(1e-6));
            IntegerMix hasty = IntegerMix.of(columns, need, new double[] {100}, 1);
            assertThat(hasty.bound()).isLessThanOrEqualTo(least + 1e-6);
        });
    }

    /** Two stocks of which there are few: the least cost by trying all numbers, and none where they do not suffice. */
    @Test
    void noMoreOfAStockIsUsedThanThereIs() {
        Cases.each(80, (random, size) -> {
            Columns columns = new Columns(2, 2);
            for (int j = 0; j < 5; j++) {
                int[] parts = {random.nextInt(3), random.nextInt(3)};
                columns.add(j % 2, parts, 1 + random.nextInt(9));
            }
            double[] need = {1 + random.nextInt(6), 1 + random.nextInt(6)};
            double[] have = {random.nextInt(3), random.nextInt(4)};
            double least = least(columns, need, have, 0);
            IntegerMix mix = IntegerMix.of(columns, need, have, 5000);
            assertThat(mix.found()).isEqualTo(least < Double.POSITIVE_INFINITY);
            if (mix.found()) {
                assertThat(mix.cost()).isCloseTo(least, within(1e-6));
                assertThat(mix.bound()).isCloseTo(least, within(1e-6));
                double[] left = have.clone();
                double[] cut = new double[2];
                for (int j = 0; j < 5; j++) {
                    left[columns.stock(j)] -= mix.uses()[j];
                    cut[0] += mix.uses()[j] * columns.parts(j)[0];
                    cut[1] += mix.uses()[j] * columns.parts(j)[1];
                }
                assertThat(left[0]).isNotNegative();
                assertThat(left[1]).isNotNegative();
                assertThat(cut[0]).isGreaterThanOrEqualTo(need[0]);
                assertThat(cut[1]).isGreaterThanOrEqualTo(need[1]);
            }
        });
    }

    private static double least(Columns columns, double[] need, double[] have, int column) {
        if (column == columns.count()) {
            return need[0] <= 0 && need[1] <= 0 ? 0 : Double.POSITIVE_INFINITY;
        }
        double least = Double.POSITIVE_INFINITY;
        double[] rest = need.clone();
        double[] left = have.clone();
        for (int n = 0; left[columns.stock(column)] >= 0; n++) {
            least = Math.min(least, n * columns.cost(column) + least(columns, rest, left, column + 1));
            left[columns.stock(column)]--;
            rest[0] -= columns.parts(column)[0];
            rest[1] -= columns.parts(column)[1];
        }
        return least;
    }

    /** Computed by hand here: costs of 0.35 and 0.5 are multiples of five hundredths, those of a third of nothing. */
    @Test
    void aBoundIsRoundedUpToWhatCostsCanBe() {
        assertThat(raised(1.21, 0.35, 0.5)).isCloseTo(1.25, within(1e-12));
        assertThat(raised(1.25, 0.35, 0.5)).isCloseTo(1.25, within(1e-12));
        assertThat(raised(1.21, 0.0002, 0.0004)).isCloseTo(1.21, within(1e-12));
        assertThat(raised(1.21, 1 / 3.0, 0.5)).isEqualTo(1.21);
    }

    private static double raised(double cost, double... costs) {
        Columns columns = new Columns(1, 1);
        for (double one : costs) {
            columns.add(0, new int[] {1}, one);
        }
        return IntegerMix.of(columns, new double[] {1}, new double[] {9}, 10).raised(cost);
    }

    /** Computed by hand here: two bars of two are one too few for five parts, whatever else there is to begin with. */
    @Test
    void numbersAtHandAreKeptUnlessOthersCostLess() {
        Columns columns = columns(1, 1, new int[] {2}, new int[] {1});
        IntegerMix.Amounts amounts = new IntegerMix.Amounts(new double[] {5}, new double[] {9});
        IntegerMix better = IntegerMix.of(columns, amounts, 100, new int[] {0, 5});
        assertThat(better.cost()).isEqualTo(3);
        IntegerMix kept = IntegerMix.of(columns, amounts, 100, new int[] {3, 0});
        assertThat(kept.cost()).isEqualTo(3);
        assertThat(kept.uses()).containsExactly(3, 0);
        IntegerMix hasty = IntegerMix.of(columns, amounts, 0, new int[] {1, 4});
        assertThat(hasty.uses()).containsExactly(1, 4);
        assertThat(hasty.cost()).isEqualTo(5);
        assertThat(hasty.bound()).isEqualTo(3);
    }
}
