package dev.calotte.nest;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.geometry.Triangle;
import dev.calotte.stock.Sheet;
import dev.calotte.stock.Terms;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What steps buy: as much work whatever the parts are. */
class BudgetTest {

    private static final Sheet SHEET = new Sheet(2438.4, 1219.2, 6.35, Terms.OPEN);
    private static final double SPACING = 3.175;

    private static Piece piece(String mark, int count, double... xy) {
        return new Piece(mark, ConvexPolygon.of(xy), count, true, OptionalDouble.empty());
    }

    /** Both faces of a bandstand's panels, each divided by a seam: as this library computed them, to 0.01 mm. */
    private static List<Piece> bandstand() {
        return List.of(
                piece(
                        "P1.1s1", 5, -1.13, 0.0, 1.92, 0.0, 2258.68, 0.0, 2261.73, 0.0, 1434.67, 1206.5, 1431.61,
                        1206.5, 828.99, 1206.5, 825.93, 1206.5),
                piece(
                        "P1.1s2", 5, 828.11, 1209.67, 831.17, 1209.67, 1429.43, 1209.67, 1432.49, 1209.67, 1130.3,
                        1650.5),
                piece("P1.2s1", 25, -1.43, -0.43, 2262.03, -0.43, 1434.96, 1206.07, 825.64, 1206.07),
                piece(
                        "P1.2s2", 25, 827.82, 1209.25, 830.87, 1209.25, 1429.73, 1209.25, 1432.78, 1209.25, 1130.3,
                        1650.5),
                piece(
                        "P2.1s1", 5, -0.49, 0.0, 1.83, 0.0, 2258.77, 0.0, 2261.09, 0.0, 1564.52, 1206.5, 1562.19,
                        1206.5, 698.41, 1206.5, 696.08, 1206.5),
                piece(
                        "P2.1s2", 5, 697.91, 1209.67, 700.24, 1209.67, 1560.36, 1209.67, 1562.69, 1209.67, 1130.3,
                        1958.59),
                piece("P2.2s1", 5, -0.74, -0.43, 2261.34, -0.43, 1564.77, 1206.07, 695.83, 1206.07),
                piece(
                        "P2.2s2", 5, 697.67, 1209.25, 699.99, 1209.25, 1560.61, 1209.25, 1562.93, 1209.25, 1130.3,
                        1958.59));
    }

    private static PatternSearch search(List<Piece> pieces, Layout layout) {
        Kinds kinds = new Kinds(pieces);
        Field field = Field.of(0, SHEET);
        Charges charges = new Charges(kinds, List.of(SHEET));
        return new PatternSearch(kinds, field, new AreaBound(kinds, charges, SPACING).capacity(field), layout);
    }

    /** All patterns take 18,000; here it ends sooner, when no pattern promises to save a sheet. */
    @Tag("search")
    @Test
    void aLookAtPatternsEndsWithItsSteps() {
        PatternSearch search = search(bandstand(), new Layout(SPACING, 2000, 2));
        assertThat(search.look(2000)).isBetween(100, 4000);
        assertThat(search.complete()).isFalse();
        assertThat(search.patterns()).anyMatch(SheetPattern::fits);
    }

    @Test
    void withoutStepsOnlySinglePartsAreLookedAt() {
        PatternSearch search = search(bandstand(), new Layout(SPACING, 2000, 1));
        assertThat(search.look(0)).isEqualTo(8);
        assertThat(search.patterns()).hasSize(8).allMatch(SheetPattern::fits);
        assertThat(search.complete()).isFalse();
    }

    /** Forty large parts, of which no two have room on one sheet: forty sheets. */
    @Tag("search")
    @Test
    void thePlanOfManyPatternsIsAsGoodAsBefore() {
        List<Piece> pieces = bandstand();
        CutPlan plan = SheetPlan.of(pieces, List.of(SHEET), new Layout(SPACING, 2000, 2));
        PlanCheck.check(plan, pieces, SPACING);
        assertThat(plan.sheets()).hasSize(40);
    }

    private static Shaking shaking(ConvexPolygon outline, int parts) {
        Piece piece = new Piece("A", outline, parts, false, OptionalDouble.empty());
        int[] kindOf = new int[parts];
        return new Shaking(new Kinds(List.of(piece)), kindOf, 0, 1).within(100, 100, false);
    }

    private static int stepsOfOneDescent(ConvexPolygon outline, int parts) {
        Shaking shaking = shaking(outline, parts);
        shaking.scatter();
        shaking.settle(0);
        return shaking.steps();
    }

    /** Computed by hand here: 1, and 1 more for each 90 in the sum of the squares of the corners. */
    @Test
    void aDescentCountsWithItsCorners() {
        ConvexPolygon triangle = ConvexPolygon.of(new Triangle(60, 60, 60));
        ConvexPolygon square = ConvexPolygon.of(0, 0, 60, 0, 60, 60, 0, 60);
        assertThat(stepsOfOneDescent(triangle, 9)).isEqualTo(1);
        assertThat(stepsOfOneDescent(triangle, 10)).isEqualTo(2);
        assertThat(stepsOfOneDescent(square, 5)).isEqualTo(1);
        assertThat(stepsOfOneDescent(square, 6)).isEqualTo(2);
        assertThat(stepsOfOneDescent(square, 17)).isEqualTo(4);
    }

    /** Six squares of 60 have no room in 100 by 100, so all that may be spent is: two for each descent. */
    @Test
    void shakingStopsWhenItsStepsAreSpent() {
        Shaking shaking = shaking(ConvexPolygon.of(0, 0, 60, 0, 60, 60, 0, 60), 6);
        shaking.scatter();
        assertThat(shaking.settle(1000, 7)).isFalse();
        assertThat(shaking.steps()).isEqualTo(8);
        assertThat(shaking.fits(50, 1000)).isFalse();
        assertThat(shaking.steps()).isBetween(58, 158);
    }

    /** Equal octagons in equal stands: the first meets none, the second one, the third two at most. */
    @Test
    void fillingCountsThePairsItLooksAt() {
        double[] xy = new double[16];
        for (int c = 0; c < 8; c++) {
            xy[2 * c] = 50 * Math.cos((c + 0.3 * (c % 3)) * Math.PI / 4);
            xy[2 * c + 1] = 50 * Math.sin((c + 0.3 * (c % 3)) * Math.PI / 4);
        }
        Kinds kinds = new Kinds(List.of(piece("A", 20, xy)));
        int stands = kinds.flush(0).size();
        Filling filling = new Filling(kinds, Field.of(0, SHEET), new Manners(0, Manner.ANY));
        filling.add(0);
        assertThat(filling.steps()).isZero();
        for (int part = 1; part < 20; part++) {
            assertThat(filling.add(0)).isTrue();
        }
        // a stand that would end beyond the best so far is not looked at
        assertThat(filling.steps()).isBetween(1, (20 * 19 / 2) * stands / 100);
    }

    /** Parts whose grain keeps them from lying in the field are counted too, so that no look at them is endless. */
    @Test
    void standsWithoutRoomCount() {
        Piece piece =
                new Piece("A", ConvexPolygon.of(new Triangle(3000, 2000, 1700)), 12, true, OptionalDouble.of(0.3));
        int[] kindOf = new int[12];
        EdgeBranching branching = new EdgeBranching(new Kinds(List.of(piece)), kindOf, Field.of(0, SHEET), SPACING);
        assertThat(branching.decide(100)).isEqualTo(EdgeBranching.Verdict.OPEN);
        assertThat(branching.nodes()).isEqualTo(100);
    }

    @Test
    void fewerStepsKeepTheRest() {
        assertThat(new Layout(3, 2000, 2).withSteps(7)).isEqualTo(new Layout(3, 7, 2));
    }

    @Test
    void partsCountAsTrianglesWithTheSquareOfTheirCorners() {
        Piece triangle = new Piece("A", ConvexPolygon.of(new Triangle(1, 1, 1)), 4, false, OptionalDouble.empty());
        assertThat(new Kinds(List.of(triangle)).inTriangles()).isEqualTo(4);
        assertThat(new Kinds(List.of(triangle, piece("B", 9, 0, 0, 1, 0, 1, 1, 0, 1))).inTriangles())
                .isEqualTo(20);
    }
}
