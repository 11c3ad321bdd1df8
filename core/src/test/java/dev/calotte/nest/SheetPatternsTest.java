package dev.calotte.nest;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.geometry.Triangle;
import dev.calotte.stock.Sheet;
import dev.calotte.stock.Stock;
import dev.calotte.stock.Terms;
import dev.calotte.testing.Cases;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SheetPatternsTest {

    /** The best known numbers, of domes.json. */
    @Tag("search")
    @ParameterizedTest
    @CsvSource({"D1_free_m, 11", "D1_free_nm, 11", "D3_free_m, 53", "D3_free_nm, 53"})
    void panelsOfDomesTakeAsFewSheetsAsIsKnown(String name, int sheets) {
        Instance dome = Instance.dome(name);
        CutPlan plan = dome.plan(4000, 2);
        PlanCheck.check(plan, dome.pieces(), dome.spacing());
        assertThat(plan.sheets()).hasSize(sheets);
        assertThat(plan.goal().bound()).isBetween(9.0, sheets - 1.0);
    }

    /** The least numbers, of domes.json: proven there too. */
    @ParameterizedTest
    @CsvSource({"D1_180_m, 14", "D1_180_nm, 14", "D3_180_m, 65", "D3_180_nm, 65"})
    void withAGrainThePlanIsProven(String name, int sheets) {
        Instance dome = Instance.dome(name);
        CutPlan plan = dome.plan(1, 1);
        PlanCheck.check(plan, dome.pieces(), dome.spacing());
        assertThat(plan.goal()).isEqualTo(new Goal(Measure.PIECES, sheets, sheets, Goal.Proof.ALL_PATTERNS));
        assertThat(plan.goal().proven()).isTrue();
    }

    @Tag("search")
    @ParameterizedTest
    @ValueSource(strings = {"D1_free_nm", "D3_180_m", "D2_180_nm"})
    void threadsChangeNothing(String name) {
        Instance dome = Instance.dome(name);
        CutPlan alone = dome.plan(300, 1);
        CutPlan shared = dome.plan(300, 3);
        assertThat(shared.goal()).isEqualTo(alone.goal());
        assertThat(text(shared)).isEqualTo(text(alone));
    }

    private static String text(CutPlan plan) {
        StringBuilder text = new StringBuilder();
        for (CutSheet sheet : plan.sheets()) {
            for (Placed p : sheet.parts()) {
                text.append(p.mark()).append(' ').append(p.xMm()).append(' ').append(p.yMm());
                text.append(' ').append(p.turnRad()).append(p.mirrored()).append('\n');
            }
        }
        return text.toString();
    }

    private static EdgeBranching.Verdict verdict(List<Piece> pieces, double length, double width, double spacing) {
        Kinds kinds = new Kinds(pieces);
        List<Integer> counts = pieces.stream().map(Piece::count).toList();
        Field field = new Field(0, length, width, 0, false);
        EdgeBranching branching = new EdgeBranching(kinds, SheetPattern.kindOf(counts), field, spacing);
        EdgeBranching.Verdict verdict = branching.decide(20_000);
        if (verdict == EdgeBranching.Verdict.FITS) {
            Sheet sheet = new Sheet(length, width, 0, Terms.OPEN);
            Goal goal = new Goal(Measure.PIECES, 1, 1, Goal.Proof.AREA);
            List<Placed> placed = new ArrayList<>();
            for (Spot spot : branching.spots()) {
                String mark = pieces.get(spot.kind()).mark();
                double turn = spot.turnRad() - Math.floor(spot.turnRad() / (2 * Math.PI)) * 2 * Math.PI;
                placed.add(new Placed(mark, spot.x(), spot.y(), turn, spot.mirrored(), kinds.outline(spot)));
            }
            CutSheet cut = new CutSheet(sheet, length, width, placed, List.of());
            PlanCheck.check(new CutPlan(List.of(cut), goal), pieces, spacing);
        }
        return verdict;
    }

    private static Piece grained(ConvexPolygon outline, int count) {
        return new Piece("P", outline, count, false, OptionalDouble.of(0));
    }

    private static PatternTrial.Outcome look(OptionalDouble grain, int count, int steps) {
        ConvexPolygon outline = ConvexPolygon.of(new Triangle(100, 100, 100));
        Kinds kinds = new Kinds(List.of(new Piece("P", outline, 9, false, grain)));
        return new PatternTrial(kinds, new Field(0, 249, 86.60255, 0, false), 0).look(List.of(count), steps);
    }

    /** Computed by hand here: in a row 249 mm long three triangles lie, of 200 mm, and a fourth would take 250. */
    @Test
    void aTrialTellsWhatFitsWhatCannotAndWhatStaysOpen() {
        for (OptionalDouble grain : List.of(OptionalDouble.of(0), OptionalDouble.empty())) {
            PatternTrial.Outcome three = look(grain, 3, 60);
            assertThat(three.pattern().fits()).isTrue();
            assertThat(three.pattern().cannot()).isFalse();
            assertThat(three.pattern().spots()).hasSize(3);
            assertThat(three.steps()).as("a filling takes a step").isEqualTo(1);
        }
        PatternTrial.Outcome four = look(OptionalDouble.of(0), 4, 60);
        assertThat(four.pattern().cannot()).isTrue();
        assertThat(four.pattern().fits()).isFalse();
        assertThat(four.steps()).isBetween(2, 60);
        PatternTrial.Outcome hasty = look(OptionalDouble.of(0), 4, 0);
        assertThat(hasty.pattern()).isEqualTo(SheetPattern.open(List.of(4)));
        assertThat(hasty.pattern().cannot()).isFalse();
        PatternTrial.Outcome free = look(OptionalDouble.empty(), 4, 10);
        assertThat(free.pattern()).isEqualTo(SheetPattern.open(List.of(4)));
        assertThat(free.pattern().fits()).isFalse();
        assertThat(free.steps()).isPositive();
    }

    /** What takes so many programmes is decided with one more, and open with no more or fewer. */
    @Test
    void noMoreProgrammesAreSolvedThanAllowed() {
        List<Piece> pair = List.of(grained(ConvexPolygon.of(new Triangle(100, 100, 100)), 2));
        EdgeBranching whole = branching(pair, 149.99999, 86.60255);
        assertThat(whole.decide(20_000)).isEqualTo(EdgeBranching.Verdict.CANNOT);
        int nodes = whole.nodes();
        assertThat(nodes).isGreaterThan(2);
        assertThat(branching(pair, 149.99999, 86.60255).decide(nodes + 1)).isEqualTo(EdgeBranching.Verdict.CANNOT);
        for (int most : new int[] {1, nodes - 1, nodes}) {
            EdgeBranching cut = branching(pair, 149.99999, 86.60255);
            assertThat(cut.decide(most)).isEqualTo(EdgeBranching.Verdict.OPEN);
            assertThat(cut.nodes()).isEqualTo(most);
        }
    }

    private static EdgeBranching branching(List<Piece> pieces, double length, double width) {
        List<Integer> counts = pieces.stream().map(Piece::count).toList();
        Field field = new Field(0, length, width, 0, false);
        return new EdgeBranching(new Kinds(pieces), SheetPattern.kindOf(counts), field, 0);
    }

    /** Computed by hand here: an up and a down equilateral triangle of side 100 are 150 long and 86.6025... wide. */
    @Test
    void twoTrianglesSideBySideNeedOneAndAHalfSides() {
        List<Piece> pair = List.of(grained(ConvexPolygon.of(new Triangle(100, 100, 100)), 2));
        assertThat(verdict(pair, 150.00001, 86.60255, 0)).isEqualTo(EdgeBranching.Verdict.FITS);
        assertThat(verdict(pair, 149.99999, 86.60255, 0)).isEqualTo(EdgeBranching.Verdict.CANNOT);
        assertThat(verdict(pair, 150.00001, 86.60250, 0)).isEqualTo(EdgeBranching.Verdict.CANNOT);
    }

    /** Computed by hand here: spacing 6 across sides at 60 degrees moves them apart by 6 / sin 60 = 6.92820... along. */
    @Test
    void spacingCountsAcrossTheSides() {
        List<Piece> pair = List.of(grained(ConvexPolygon.of(new Triangle(100, 100, 100)), 2));
        assertThat(verdict(pair, 156.92821, 86.60255, 6)).isEqualTo(EdgeBranching.Verdict.FITS);
        assertThat(verdict(pair, 156.92819, 86.60255, 6)).isEqualTo(EdgeBranching.Verdict.CANNOT);
    }

    /** Two right-angled corners point at each other: 6 apart at 45 degrees. Computed by hand here. */
    @Test
    void cornersStandApartByTheSpacingNotByItsMitre() {
        ConvexPolygon diamond = ConvexPolygon.of(0, -50, 50, 0, 0, 50, -50, 0);
        List<Piece> pair = List.of(grained(diamond, 2));
        assertThat(verdict(pair, 206.00001, 100.00001, 6)).isEqualTo(EdgeBranching.Verdict.FITS);
        assertThat(verdict(pair, 205.9, 100.00001, 6)).isNotEqualTo(EdgeBranching.Verdict.FITS);
        assertThat(verdict(pair, 203, 100.00001, 6)).isEqualTo(EdgeBranching.Verdict.CANNOT);
    }

    /** A part in two kinds of size: what shaking can lay, branching must not forbid, and the other way round. */
    @Test
    void branchingAndShakingDoNotContradictEachOther() {
        int[] seen = new int[2];
        Cases.each(60, (random, size) -> {
            List<Piece> pieces =
                    List.of(piece("A", random, 1 + random.nextInt(2)), piece("B", random, 1 + random.nextInt(2)));
            double length = 180 + 120 * random.nextDouble();
            double spacing = random.nextInt(2) * 5;
            EdgeBranching.Verdict verdict = verdict(pieces, length, 150, spacing);
            List<Integer> counts = pieces.stream().map(Piece::count).toList();
            Shaking shaking = new Shaking(new Kinds(pieces), SheetPattern.kindOf(counts), spacing, size)
                    .within(length, 150, false);
            if (shaking.fits(150, 10)) {
                assertThat(verdict).isEqualTo(EdgeBranching.Verdict.FITS);
                seen[0]++;
            } else {
                seen[1]++;
            }
        });
        if (!Boolean.getBoolean("calotte.few")) {
            assertThat(seen[0]).isGreaterThan(5);
            assertThat(seen[1]).isGreaterThan(5);
        }
    }

    private static Piece piece(String mark, Random random, int count) {
        double[] xy = new double[6];
        for (int c = 0; c < 3; c++) {
            double angle = 2 * Math.PI * (c + 0.6 * random.nextDouble()) / 3;
            xy[2 * c] = 75 * Math.cos(angle);
            xy[2 * c + 1] = 75 * Math.sin(angle);
        }
        OptionalDouble grain = OptionalDouble.of(random.nextDouble());
        return new Piece(mark, ConvexPolygon.of(xy), count, random.nextBoolean(), grain);
    }

    /** Computed by hand here: of 500 by 400 the small sheet holds two for 5, the large one five for 11. */
    @Test
    void severalSheetsAreMixedAtTheLeastPrice() {
        Piece piece = new Piece("A", ConvexPolygon.of(0, 0, 500, 0, 500, 400, 0, 400), 7, false, OptionalDouble.of(0));
        Sheet small = new Sheet(1000, 400, 0, price(5, OptionalInt.empty()));
        Sheet large = new Sheet(2500, 400, 0, price(11, OptionalInt.empty()));
        CutPlan plan = plan(piece, small, large);
        assertThat(plan.goal()).isEqualTo(new Goal(Measure.PRICE, 16, 16, Goal.Proof.ALL_PATTERNS));
        assertThat(plan.sheets()).extracting(CutSheet::stock).containsExactly(small, large);
        CutPlan few = plan(piece, small, new Sheet(2500, 400, 0, price(3, OptionalInt.of(1))));
        assertThat(few.goal().reached()).isEqualTo(8);
        assertThat(few.goal().proven()).isTrue();
    }

    private static CutPlan plan(Piece piece, Stock... stocks) {
        CutPlan plan = SheetPlan.of(List.of(piece), List.of(stocks), new Layout(0, 1, 1));
        PlanCheck.check(plan, List.of(piece), 0);
        return plan;
    }

    private static Terms price(double price, OptionalInt have) {
        return new Terms(OptionalDouble.of(price), OptionalDouble.empty(), have);
    }
}
