package dev.calotte.nest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.geometry.Polygon;
import dev.calotte.problem.CalotteException;
import dev.calotte.stock.Bar;
import dev.calotte.stock.Outline;
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
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Parts as wide as the stock stand in a row, so that plans are those of bars, or counted by dividing. */
class StripsTest {

    private static final double WIDTH = 300;
    private static final double SPACING = 10;
    private static final Layout FIRST = new Layout(SPACING, 0, 1);

    private static Piece strip(String mark, double length, int count) {
        ConvexPolygon outline = ConvexPolygon.of(0, 0, length, 0, length, WIDTH, 0, WIDTH);
        return new Piece(mark, outline, count, false, OptionalDouble.of(0));
    }

    private static Terms terms(double price, OptionalInt have) {
        return new Terms(OptionalDouble.of(price), OptionalDouble.empty(), have);
    }

    private static List<Piece> strips(Random random, int kinds, double least) {
        List<Piece> strips = new ArrayList<>();
        for (int kind = 0; kind < kinds; kind++) {
            double length = least + 10 * random.nextInt(40) + kind;
            strips.add(strip("P" + kind, length, 1 + random.nextInt(3)));
        }
        return strips;
    }

    @Test
    void stripsTakeTheSheetsThatTheyWouldTakeOfBars() {
        Cases.each(25, (random, size) -> {
            List<Piece> strips = strips(random, 1 + size % 3, 260);
            Terms dear = terms(11 + random.nextInt(4), OptionalInt.empty());
            Terms cheap = terms(8 + random.nextInt(3), OptionalInt.of(1 + random.nextInt(2)));
            List<Cut> cuts = strips.stream()
                    .map(strip -> new Cut(strip.mark(), strip.outline().x(1), strip.count()))
                    .toList();
            BarPlan bars = BarPlan.of(cuts, List.of(new Bar(1400, SPACING, 0, dear), new Bar(1000, SPACING, 0, cheap)));
            List<Stock> sheets = List.of(new Sheet(1400, WIDTH, 0, dear), new Sheet(1000, WIDTH, 0, cheap));
            CutPlan plan = SheetPlan.of(strips, sheets, new Layout(SPACING, 1, 1));
            PlanCheck.check(plan, strips, SPACING);
            assertThat(plan.goal().reached()).isCloseTo(bars.goal().reached(), within(1e-9));
            assertThat(plan.goal().bound()).isCloseTo(bars.goal().bound(), within(1e-9));
        });
    }

    private static List<List<Integer>> rows(List<Piece> strips, double length) {
        List<List<Integer>> rows = new ArrayList<>();
        rows.add(List.of());
        for (Piece strip : strips) {
            List<List<Integer>> longer = new ArrayList<>();
            for (List<Integer> row : rows) {
                for (int n = 0; n <= strip.count(); n++) {
                    List<Integer> more = new ArrayList<>(row);
                    more.add(n);
                    longer.add(more);
                }
            }
            rows = longer;
        }
        rows.removeIf(row -> row.stream().allMatch(n -> n == 0) || row(strips, row) > length + 1e-9);
        return rows;
    }

    private static double row(List<Piece> strips, List<Integer> counts) {
        double row = -SPACING;
        for (int kind = 0; kind < counts.size(); kind++) {
            row += counts.get(kind) * (strips.get(kind).outline().x(1) + SPACING);
        }
        return row;
    }

    @Test
    void patternsAreAllRowsThatAreShortEnough() {
        Cases.each(24, (random, size) -> {
            List<Piece> strips = strips(random, 1 + size % 3, 200);
            Kinds kinds = new Kinds(strips);
            Field field = new Field(0, 1000, WIDTH, 0, false);
            List<Stock> sheet = List.of(new Sheet(1000, WIDTH, 0, Terms.OPEN));
            double capacity = new AreaBound(kinds, new Charges(kinds, sheet), SPACING).capacity(field);
            PatternSearch search = new PatternSearch(kinds, field, capacity, new Layout(SPACING, 4000, 1));
            assertThat(search.look(4000)).isPositive();
            assertThat(search.complete()).isTrue();
            assertThat(search.patterns()).allMatch(SheetPattern::fits);
            assertThat(search.patterns())
                    .extracting(SheetPattern::counts)
                    .containsExactlyInAnyOrderElementsOf(rows(strips, 1000));
            int again = search.look(4000);
            assertThat(again).as("nothing is looked at twice").isZero();
            assertThat(search.patterns()).hasSize(rows(strips, 1000).size());
        });
    }

    /** Equal strips, three to a sheet, in batches of so many. */
    private static BatchPlan.Order order(int[] counts, Stock stock) {
        List<List<Integer>> batches = new ArrayList<>();
        int all = 0;
        for (int count : counts) {
            batches.add(List.of(count));
            all += count;
        }
        return new BatchPlan.Order(List.of(strip("A", 300, all)), batches, List.of(stock));
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
        Stock sheet = new Sheet(1000, WIDTH, 0, new Terms(OptionalDouble.empty(), OptionalDouble.empty(), have));
        Goal free = new Goal(Measure.PIECES, 1, 0, Goal.Proof.AREA);
        return BatchPlan.of(order(counts, sheet), FIRST, free);
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
                new Sheet(1100, WIDTH, 0, terms(8, OptionalInt.empty())),
                new Sheet(1000, WIDTH, 0, terms(5, OptionalInt.of(2))));
        List<List<Integer>> batches = List.of(List.of(3), List.of(3), List.of(3), List.of(3));
        BatchPlan.Order order = new BatchPlan.Order(List.of(strip("A", 300, 12)), batches, sheets);
        BatchPlan plan = BatchPlan.of(order, FIRST, new Goal(Measure.PRICE, 26, 20, Goal.Proof.AREA));
        assertThat(plan.plan().goal().reached()).isEqualTo(26);
        assertThat(plan.plan().sheets()).extracting(CutSheet::stock)
                .containsExactly(sheets.get(1), sheets.get(1), sheets.get(0), sheets.get(0));
    }

    /** By hand: 390 and twice 295 fill 1000 mm; by falling size two of 390 share a sheet, and a third is begun. */
    private static List<Piece> oddStrips() {
        return List.of(strip("A", 390, 2), strip("B", 295, 4));
    }

    private static double reached(List<Piece> strips, int steps, Stock... stocks) {
        CutPlan plan = SheetPlan.of(strips, List.of(stocks), new Layout(SPACING, steps, 1));
        PlanCheck.check(plan, strips, SPACING);
        return plan.goal().reached();
    }

    @Test
    void patternsSaveASheetThatTheFirstPlanBegins() {
        Sheet sheet = new Sheet(1000, WIDTH, 0, terms(1, OptionalInt.empty()));
        Roll dear = new Roll(WIDTH, 0, OptionalDouble.empty(), terms(99, OptionalInt.empty()));
        assertThat(reached(oddStrips(), 0, sheet)).isEqualTo(3);
        assertThat(reached(oddStrips(), 1, sheet)).isEqualTo(2);
        assertThat(reached(oddStrips(), 1, sheet, dear)).isEqualTo(2);
    }

    /** By hand: of all strips two of 345 cover most of the outline's 700 mm; the rest saves a sheet by patterns. */
    @Test
    void stepsGoToOutlinesAndToWhatTheyLeave() {
        List<Piece> strips = new ArrayList<>(oddStrips());
        strips.add(strip("C", 345, 2));
        Sheet sheet = new Sheet(1000, WIDTH, 0, Terms.OPEN);
        assertThat(reached(strips, 0, outline(0, 1), sheet)).isEqualTo(3);
        assertThat(reached(strips, 600, outline(0, 1), sheet)).isEqualTo(2);
    }

    /** Twelve lengths make thousands of rows; those that promise most suffice for all but one sheet more than bars take. */
    @Test
    void ofTooManyPatternsTheMostPromisingAreLookedAt() {
        List<Piece> strips = new ArrayList<>();
        List<Cut> cuts = new ArrayList<>();
        for (int kind = 0; kind < 12; kind++) {
            strips.add(strip("P" + kind, 185 + 11 * kind, 2));
            cuts.add(new Cut("P" + kind, 185 + 11 * kind, 2));
        }
        Kinds kinds = new Kinds(strips);
        Field field = new Field(0, 1000, WIDTH, 0, false);
        PatternSearch search = new PatternSearch(kinds, field, 1000 * (WIDTH + SPACING), FIRST.withSteps(1000));
        assertThat(search.look(1000)).isBetween(1, 1100);
        assertThat(search.complete()).isFalse();
        Columns columns = new Columns(12, 1);
        for (SheetPattern pattern : search.patterns()) {
            assertThat(pattern.fits()).isEqualTo(row(strips, pattern.counts()) <= 1000);
            if (pattern.fits()) {
                columns.add(0, pattern.parts(), 1);
            }
        }
        int bars = BarPlan.of(cuts, List.of(new Bar(1000, SPACING, 0, Terms.OPEN)))
                .bars()
                .size();
        IntegerMix mix = IntegerMix.of(columns, kinds.need(), new double[] {24}, 300);
        assertThat(mix.cost()).isBetween((double) bars, bars + 1.0);
    }

    /** By hand: eight strips in a row are 8 x 300 + 7 x 10 long, with or without batches. */
    @Test
    void onARollBatchesFollowEachOtherAsIfTheyWereOne() {
        int[] counts = {2, 1, 3, 2};
        Goal free = new Goal(Measure.LENGTH_MM, 2510, 2510, Goal.Proof.AREA);
        Terms one = new Terms(OptionalDouble.empty(), OptionalDouble.empty(), OptionalInt.of(1));
        Roll roll = new Roll(WIDTH + 40, 20, OptionalDouble.of(2510), one);
        BatchPlan plan = BatchPlan.of(order(counts, roll), FIRST, free);
        assertThat(plan.plan().goal().reached()).isCloseTo(2510, within(1e-6));
        assertThat(plan.groups()).containsExactly(1, 1, 1, 1);
        assertThat(plan.groupOf()).containsExactly(List.of(0, 0, 1, 2, 2, 2, 3, 3));
        Roll shorter = new Roll(WIDTH + 40, 20, OptionalDouble.of(2509), one);
        assertThatThrownBy(() -> BatchPlan.of(order(counts, shorter), FIRST, free))
                .isInstanceOf(CalotteException.class);
    }

    /** An outline with a point beyond 700 mm, which no strip reaches into: it holds three of 200, a sheet of 1000 four. */
    private static Outline outline(double price, int have) {
        Polygon border = Polygon.of(0, 0, 700, 0, 730, WIDTH / 2, 700, WIDTH, 0, WIDTH);
        return new Outline("o", border, 0, terms(price, OptionalInt.of(have)));
    }

    @Test
    void soManyOutlinesAreBoughtAsSaveMost() {
        Cases.each(40, (random, size) -> {
            int count = 1 + random.nextInt(16);
            int have = 1 + random.nextInt(4);
            int outline = 1 + random.nextInt(9);
            int sheet = 6 + random.nextInt(5);
            int least = Integer.MAX_VALUE;
            for (int n = 0; n <= have; n++) {
                least = Math.min(least, n * outline + sheet * ((Math.max(0, count - 3 * n) + 3) / 4));
            }
            List<Piece> strips = List.of(strip("A", 200, count));
            List<Stock> stocks =
                    List.of(outline(outline, have), new Sheet(1000, WIDTH, 0, terms(sheet, OptionalInt.empty())));
            CutPlan plan = SheetPlan.of(strips, stocks, FIRST);
            PlanCheck.check(plan, strips, SPACING);
            assertThat(plan.goal().reached()).isEqualTo(least);
        });
    }

    @Test
    void outlinesThatCostNothingAreUsedUpFirst() {
        Cases.each(24, (random, size) -> {
            int count = 1 + random.nextInt(16);
            int have = 1 + random.nextInt(4);
            List<Piece> strips = List.of(strip("A", 200, count));
            List<Stock> stocks = List.of(new Sheet(1000, WIDTH, 0, Terms.OPEN), outline(0, have));
            CutPlan plan = SheetPlan.of(strips, stocks, FIRST);
            PlanCheck.check(plan, strips, SPACING);
            int sheets = (Math.max(0, count - 3 * have) + 3) / 4;
            assertThat(plan.goal().reached()).isEqualTo(sheets);
            assertThat(plan.sheets()).hasSize(sheets + Math.min(have, (count + 2) / 3));
            if (sheets > 0) {
                assertThatThrownBy(() -> SheetPlan.of(strips, stocks.subList(1, 2), FIRST))
                        .isInstanceOf(CalotteException.class)
                        .hasMessageContaining(": " + (count - 3 * have) + " find no room on the irregular outlines");
            }
        });
    }

    private static double filled(int steps, int[] counts, double... lengths) {
        List<Piece> strips = new ArrayList<>();
        for (int kind = 0; kind < lengths.length; kind++) {
            strips.add(strip("P" + kind, lengths[kind], counts[kind]));
        }
        Kinds kinds = new Kinds(strips);
        OutlineFilling filling =
                new OutlineFilling(kinds, Field.of(0, outline(0, 1)), FIRST.withSteps(steps), kinds.needed());
        double sum = 0;
        for (Spot spot : filling.fill(List.of(Manner.ANY)).spots()) {
            sum += lengths[spot.kind()];
        }
        assertThat(filling.steps()).isGreaterThanOrEqualTo(Math.min(2, steps));
        return sum;
    }

    /** By hand, in 700 mm with 10 between: by falling size 450 and 230, or 400 and 220; by rising size 600, or 660. */
    @Test
    void anOutlineIsCoveredAsFarAsOrdersBySizeGo() {
        assertThat(filled(0, new int[] {2, 1, 3}, 230, 450, 200)).isEqualTo(680);
        assertThat(filled(0, new int[] {2, 3}, 400, 220)).isEqualTo(660);
        assertThat(filled(0, new int[] {1, 3}, 800, 220)).isEqualTo(660);
        assertThat(filled(0, new int[] {1, 1}, 800, 750)).isZero();
    }

    /** By hand: 500 and 150 by falling size, 150 and 340 by rising size; two of 340 and the gap are 690. */
    @Test
    void ordersLeftToChanceCoverMoreOfAnOutline() {
        assertThat(filled(0, new int[] {1, 2, 1}, 500, 340, 150)).isEqualTo(650);
        assertThat(filled(300, new int[] {1, 2, 1}, 500, 340, 150)).isEqualTo(680);
    }
}
