package dev.calotte.nest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.geometry.Triangle;
import dev.calotte.stock.Bar;
import dev.calotte.stock.Roll;
import dev.calotte.stock.Sheet;
import dev.calotte.stock.Stock;
import dev.calotte.stock.Terms;
import dev.calotte.testing.Cases;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Parts as wide as the stock stand in a row, so that plans are those of bars, or counted by dividing. */
class StripsTest {

    static final double WIDTH = 300;
    static final double SPACING = 10;
    static final Layout FIRST = new Layout(SPACING, 0, 1);

    static Piece strip(String mark, double length, int count) {
        ConvexPolygon outline = ConvexPolygon.of(0, 0, length, 0, length, WIDTH, 0, WIDTH);
        return new Piece(mark, outline, count, false, OptionalDouble.of(0));
    }

    static Terms terms(double price, OptionalInt have) {
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

    /** By hand: 390 and twice 295 fill 1000 mm; by falling size two of 390 share a sheet, and a third is begun. */
    static List<Piece> oddStrips() {
        return List.of(strip("A", 390, 2), strip("B", 295, 4));
    }

    static double reached(List<Piece> strips, int steps, Stock... stocks) {
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

    private static List<Piece> twelve() {
        List<Piece> strips = new ArrayList<>();
        for (int kind = 0; kind < 12; kind++) {
            strips.add(strip("P" + kind, 185 + 11 * kind, 2));
        }
        return strips;
    }

    /** Twelve lengths make thousands of rows; those that promise most suffice for all but one sheet more than bars take. */
    @Test
    void ofTooManyPatternsTheMostPromisingAreLookedAt() {
        List<Piece> strips = twelve();
        List<Cut> cuts = strips.stream()
                .map(strip -> new Cut(strip.mark(), strip.outline().x(1), 2))
                .toList();
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

    private static PatternSearch search(Kinds kinds, double capacity) {
        return new PatternSearch(kinds, new Field(0, 1000, WIDTH, 0, false), capacity, FIRST.withSteps(1000));
    }

    @Test
    void withoutStepsOnlySinglePartsAreLookedAt() {
        PatternSearch search = search(new Kinds(oddStrips()), 1000 * (WIDTH + SPACING));
        assertThat(search.look(0)).isEqualTo(2);
        assertThat(search.complete()).isFalse();
        assertThat(search.patterns())
                .extracting(SheetPattern::counts)
                .containsExactlyInAnyOrder(List.of(1, 0), List.of(0, 1));
    }

    /** By hand: of strips of 295 and half a spacing round them two cover 600 by 310 mm, and three more than that. */
    @Test
    void whatTheAreaExcludesIsNotLookedAt() {
        Kinds kinds = new Kinds(List.of(strip("B", 295, 4)));
        PatternSearch search = search(kinds, 2.5 * kinds.coveredMm2(0, SPACING));
        assertThat(search.look(1000)).isEqualTo(2);
        assertThat(search.complete()).isTrue();
        assertThat(search.patterns()).extracting(SheetPattern::counts).containsExactly(List.of(1), List.of(2));
    }

    private static SheetMix mixed(List<Piece> pieces, double length, double width) {
        Kinds kinds = new Kinds(pieces);
        List<Stock> sheets = List.of(new Sheet(length, width, 0, Terms.OPEN));
        Field field = Field.of(0, sheets.get(0));
        int[] have = {kinds.parts()};
        SheetMix mix = new SheetMix(kinds, List.of(field), have, new Charges(kinds, sheets), FIRST);
        mix.search();
        return mix;
    }

    @Test
    void whereAllPatternsAreKnownTheirMixIsTheBound() {
        SheetMix mix = mixed(oddStrips(), 1000, WIDTH);
        assertThat(mix.best()).hasSize(2);
        assertThat(mix.best()).extracting(filled -> filled.spots().size()).containsExactly(3, 3);
        assertThat(mix.bound()).isEqualTo(2);
        assertThat(mix.steps()).isBetween(1, 1000);
    }

    /** By hand: with gaps three triangles of 100 in a row take 223 mm, four 285; what other turns hold is not decided. */
    @Test
    void aPatternThatMayFitLowersTheBound() {
        ConvexPolygon triangle = ConvexPolygon.of(new Triangle(100, 100, 100));
        Piece free = new Piece("T", triangle, 4, false, OptionalDouble.empty());
        SheetMix mix = mixed(List.of(free), 264, 86.60255);
        assertThat(mix.best()).hasSize(2);
        assertThat(mix.bound()).isEqualTo(1);
        // the open pattern is looked at again and again, each time longer
        assertThat(mix.steps()).isBetween(500, 1500);
    }

    @Test
    void ofTooManyPatternsNoBoundIsKnown() {
        SheetMix mix = mixed(twelve(), 1000, WIDTH);
        assertThat(mix.bound()).isZero();
        assertThat(mix.best()).isNotEmpty();
    }

    /** By hand: sheets alone would take two for 10 each, a roll at 1 a metre takes six strips of 1.96 m for 2.01. */
    @Test
    void besideARollPatternsOfSheetsAreNoBound() {
        Sheet sheet = new Sheet(1000, WIDTH, 0, terms(10, OptionalInt.empty()));
        Roll roll = new Roll(WIDTH, 0, OptionalDouble.empty(), terms(1, OptionalInt.empty()));
        CutPlan plan = SheetPlan.of(oddStrips(), List.of(sheet, roll), new Layout(SPACING, 1, 1));
        assertThat(plan.goal().reached()).isCloseTo(2.01, within(1e-9));
        assertThat(plan.goal().bound()).isCloseTo(1.96, within(1e-9));
        assertThat(plan.goal().proof()).isEqualTo(Goal.Proof.AREA);
    }

    /** By hand: of three sheets the one for 1 comes first, then the one for 5, which is listed after the one for 9. */
    @Test
    void whatCostsLessForItsAreaIsBegunSooner() {
        Sheet dear = new Sheet(1000, WIDTH, 0, terms(9, OptionalInt.empty()));
        Sheet cheap = new Sheet(1001, WIDTH, 0, terms(1, OptionalInt.of(1)));
        Sheet other = new Sheet(1002, WIDTH, 0, terms(5, OptionalInt.empty()));
        assertThat(reached(List.of(strip("A", 300, 6)), 0, dear, cheap, other)).isEqualTo(6);
        Roll roll = new Roll(WIDTH, 0, OptionalDouble.of(1000), terms(7, OptionalInt.empty()));
        assertThat(reached(List.of(strip("A", 300, 6)), 0, dear, cheap, roll)).isCloseTo(1 + 7 * 0.92, within(1e-9));
    }
}
