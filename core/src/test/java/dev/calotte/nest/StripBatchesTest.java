package dev.calotte.nest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.problem.CalotteException;
import dev.calotte.stock.Roll;
import dev.calotte.stock.Sheet;
import dev.calotte.stock.Stock;
import dev.calotte.stock.Terms;
import dev.calotte.testing.Cases;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Batches of parts as wide as the stock, counted by dividing. */
class StripBatchesTest {

    /** Equal strips, three to a sheet, in batches of so many. */
    private static BatchPlan.Order order(int[] counts, Stock stock) {
        List<List<Integer>> batches = new ArrayList<>();
        int all = 0;
        for (int count : counts) {
            batches.add(List.of(count));
            all += count;
        }
        return new BatchPlan.Order(List.of(StripsTest.strip("A", 300, all)), batches, List.of(stock));
    }

    /** The fewest sheets for groups of no more than so many batches. */
    private static int fewest(int[] counts, int first, int most) {
        if (first == counts.length) {
            return 0;
        }
        int least = Integer.MAX_VALUE;
        int parts = 0;
        for (int size = 1; size <= most && first + size <= counts.length; size++) {
            parts += counts[first + size - 1];
            least = Math.min(least, (parts + 2) / 3 + fewest(counts, first + size, most));
        }
        return least;
    }

    private static BatchPlan laid(int[] counts, OptionalInt have) {
        Stock sheet =
                new Sheet(1000, StripsTest.WIDTH, 0, new Terms(OptionalDouble.empty(), OptionalDouble.empty(), have));
        Goal free = new Goal(Measure.PIECES, 1, 0, Goal.Proof.AREA);
        return BatchPlan.of(order(counts, sheet), StripsTest.FIRST, free);
    }

    @Test
    void batchesAreLaidTogetherWhereThatSavesSheets() {
        Cases.each(40, (random, size) -> {
            int[] counts = random.ints(2 + size % 7, 1, 6).toArray();
            int most = Math.max(1, Math.min(4, counts.length / 2));
            int least = fewest(counts, 0, most);
            int enough = 1;
            while (fewest(counts, 0, enough) > least) {
                enough++;
            }
            int largest = enough;
            BatchPlan plan = laid(counts, OptionalInt.empty());
            assertThat(plan.plan().goal().reached()).isEqualTo(least);
            assertThat(plan.groups()).allMatch(group -> group <= largest);
            assertThat(plan.groups().stream().mapToInt(n -> n).sum()).isEqualTo(counts.length);
            assertThat(laid(counts, OptionalInt.of(least)).plan().sheets()).hasSize(least);
            if (least > 1) {
                assertThatThrownBy(() -> laid(counts, OptionalInt.of(least - 1)))
                        .isInstanceOf(CalotteException.class);
            }
        });
    }

    /** By hand: two single strips share the last sheet, which is one saved of 99 or of 102. */
    @Test
    void batchesAreLaidTogetherOnlyWhereThatSavesAHundredth() {
        for (int full : new int[] {97, 100}) {
            int[] counts = new int[full + 2];
            Arrays.fill(counts, 3);
            counts[full] = 1;
            counts[full + 1] = 1;
            BatchPlan plan = laid(counts, OptionalInt.empty());
            assertThat(plan.groups()).hasSize(full < 100 ? full + 1 : full + 2);
        }
    }

    /** By hand: four batches of a sheet each, of which there are two for 5, and others for 8. */
    @Test
    void whatOneBatchTookIsNotThereForTheNext() {
        List<Stock> sheets = List.of(
                new Sheet(1100, StripsTest.WIDTH, 0, StripsTest.terms(8, OptionalInt.empty())),
                new Sheet(1000, StripsTest.WIDTH, 0, StripsTest.terms(5, OptionalInt.of(2))));
        List<List<Integer>> batches = List.of(List.of(3), List.of(3), List.of(3), List.of(3));
        BatchPlan.Order order = new BatchPlan.Order(List.of(StripsTest.strip("A", 300, 12)), batches, sheets);
        BatchPlan plan = BatchPlan.of(order, StripsTest.FIRST, new Goal(Measure.PRICE, 26, 20, Goal.Proof.AREA));
        assertThat(plan.plan().goal().reached()).isEqualTo(26);
        assertThat(plan.plan().sheets())
                .extracting(CutSheet::stock)
                .containsExactly(sheets.get(1), sheets.get(1), sheets.get(0), sheets.get(0));
    }

    /** By hand: eight strips in a row are 8 x 300 + 7 x 10 long, with or without batches. */
    @Test
    void onARollBatchesFollowEachOtherAsIfTheyWereOne() {
        int[] counts = {2, 1, 3, 2};
        Goal free = new Goal(Measure.LENGTH_MM, 2510, 2510, Goal.Proof.AREA);
        Terms one = new Terms(OptionalDouble.empty(), OptionalDouble.empty(), OptionalInt.of(1));
        Roll roll = new Roll(StripsTest.WIDTH + 40, 20, OptionalDouble.of(2510), one);
        BatchPlan plan = BatchPlan.of(order(counts, roll), StripsTest.FIRST, free);
        assertThat(plan.plan().goal().reached()).isCloseTo(2510, within(1e-6));
        assertThat(plan.groups()).containsExactly(1, 1, 1, 1);
        assertThat(plan.groupOf()).containsExactly(List.of(0, 0, 1, 2, 2, 2, 3, 3));
        Roll shorter = new Roll(StripsTest.WIDTH + 40, 20, OptionalDouble.of(2509), one);
        assertThatThrownBy(() -> BatchPlan.of(order(counts, shorter), StripsTest.FIRST, free))
                .isInstanceOf(CalotteException.class);
    }
}
