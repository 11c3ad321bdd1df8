package dev.calotte.nest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.geometry.Polygon;
import dev.calotte.problem.CalotteException;
import dev.calotte.stock.Outline;
import dev.calotte.stock.Roll;
import dev.calotte.stock.Sheet;
import dev.calotte.stock.Stock;
import dev.calotte.stock.Terms;
import dev.calotte.testing.Cases;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Test;

class OutlinesTest {

    private static final double SPACING = 6;

    /** 1200 by 900, without a quarter of 700 by 500 at its upper right. */
    private static final Polygon L_SHAPE = Polygon.of(0, 0, 1200, 0, 1200, 400, 500, 400, 500, 900, 0, 900);

    private static final ConvexPolygon PANE = ConvexPolygon.of(0, 0, 300, 0, 140, 250);
    private static final ConvexPolygon SMALL = ConvexPolygon.of(0, 0, 200, 0, 90, 160);
    private static final Sheet SHEET = new Sheet(1500, 1000, 10, Terms.OPEN);

    private static Outline outline(Polygon border, int have) {
        return new Outline("offcut", border, 10, terms(0, have));
    }

    private static Terms terms(double price, int have) {
        return new Terms(OptionalDouble.of(price), OptionalDouble.empty(), OptionalInt.of(have));
    }

    private static Piece free(String mark, ConvexPolygon shape, int count) {
        return new Piece(mark, shape, count, true, OptionalDouble.empty());
    }

    private static Piece grained(String mark, ConvexPolygon shape, int count) {
        return new Piece(mark, shape, count, false, OptionalDouble.of(0.3));
    }

    private static CutPlan checked(List<Piece> pieces, List<? extends Stock> stocks, int steps) {
        CutPlan plan = SheetPlan.of(pieces, stocks, new Layout(SPACING, steps, 2));
        PlanCheck.check(plan, pieces, SPACING);
        return plan;
    }

    private static long outlines(CutPlan plan) {
        return plan.sheets().stream().filter(s -> s.stock() instanceof Outline).count();
    }

    @Test
    void partsLieInsideAHollowOutline() {
        CutPlan plan = checked(List.of(free("A", PANE, 8), free("B", SMALL, 4)), List.of(outline(L_SHAPE, 1)), 0);
        assertThat(outlines(plan)).isEqualTo(1);
        // beside nothing that is bought, what costs nothing is counted
        assertThat(plan.goal().measure()).isEqualTo(Measure.PIECES);
        assertThat(plan.goal().reached()).isEqualTo(1);
        assertThat(plan.goal().proven()).isTrue();
    }

    @Test
    void theGrainIsKept() {
        CutPlan plan = checked(List.of(grained("A", PANE, 6), grained("B", SMALL, 4)), List.of(outline(L_SHAPE, 1)), 0);
        assertThat(outlines(plan)).isEqualTo(1);
    }

    @Test
    void whatTheOutlineDoesNotHoldComesFromSheets() {
        List<Piece> pieces = List.of(free("A", PANE, 32), free("B", SMALL, 10));
        CutPlan with = checked(pieces, List.of(SHEET, outline(L_SHAPE, 2)), 0);
        CutPlan without = checked(pieces, List.of(SHEET), 0);
        assertThat(outlines(with)).isEqualTo(2);
        assertThat(with.goal().reached()).isLessThan(without.goal().reached());
        assertThat(with.goal().measure()).isEqualTo(Measure.PIECES);
        assertThat(with.goal().reached()).isEqualTo(with.sheets().size() - 2);
    }

    @Test
    void moreStepsSpendNoMore() {
        List<Piece> pieces = List.of(free("A", PANE, 12), free("B", SMALL, 8));
        Roll roll = new Roll(700, 10, OptionalDouble.empty(), Terms.OPEN);
        CutPlan quick = checked(pieces, List.of(outline(L_SHAPE, 1), roll), 0);
        CutPlan slow = checked(pieces, List.of(outline(L_SHAPE, 1), roll), 200);
        assertThat(slow.goal().measure()).isEqualTo(Measure.LENGTH_MM);
        assertThat(slow.goal().reached()).isLessThanOrEqualTo(quick.goal().reached());
    }

    @Test
    void anOutlineTooSmallForAnythingChangesNothing() {
        List<Piece> pieces = List.of(free("A", PANE, 20));
        Outline tiny = outline(Polygon.of(0, 0, 150, 0, 0, 150), 3);
        CutPlan with = checked(pieces, List.of(tiny, SHEET), 200);
        CutPlan without = checked(pieces, List.of(SHEET), 200);
        assertThat(outlines(with)).isZero();
        assertThat(with.goal()).isEqualTo(without.goal());
    }

    @Test
    void anOutlineWhoseBoxAloneIsLargeEnoughChangesNoPlan() {
        // an angle of 100 mm wide strips: the box takes a pane, the angle does not
        Polygon angle = Polygon.of(0, 0, 800, 0, 800, 100, 100, 100, 100, 800, 0, 800);
        CutPlan plan = checked(List.of(free("A", PANE, 5)), List.of(outline(angle, 1), SHEET), 0);
        assertThat(outlines(plan)).isZero();
        assertThat(plan.goal().reached()).isEqualTo(1);
    }

    @Test
    void anOutlineIsBoughtWhereItSavesMoreThanItCosts() {
        List<Piece> pieces = List.of(free("A", PANE, 8));
        Sheet dear = new Sheet(1500, 1000, 10, terms(40, 100));
        CutPlan cheap = checked(pieces, List.of(dear, new Outline("o", L_SHAPE, 10, terms(5, 1))), 0);
        CutPlan costly = checked(pieces, List.of(dear, new Outline("o", L_SHAPE, 10, terms(50, 1))), 0);
        assertThat(cheap.goal().reached()).isEqualTo(5);
        assertThat(costly.goal().reached()).isEqualTo(40);
        assertThat(costly.goal().bound()).isLessThanOrEqualTo(40);
    }

    @Test
    void outlinesAreTakenNoMoreOftenThanTheyAreThere() {
        CutPlan plan = checked(List.of(free("A", PANE, 30)), List.of(outline(L_SHAPE, 2), SHEET), 0);
        assertThat(outlines(plan)).isLessThanOrEqualTo(2);
    }

    @Test
    void tooLittleIsRefused() {
        assertThatThrownBy(() -> checked(List.of(free("A", PANE, 60)), List.of(outline(L_SHAPE, 1)), 0))
                .isInstanceOf(CalotteException.class)
                .hasMessageContaining("does not hold all 60 parts");
    }

    @Test
    void threadsChangeNothing() {
        List<Piece> pieces = List.of(free("A", PANE, 12), free("B", SMALL, 12));
        List<Stock> stocks = List.of(outline(L_SHAPE, 1), SHEET);
        CutPlan one = SheetPlan.of(pieces, stocks, new Layout(SPACING, 600, 1));
        CutPlan three = SheetPlan.of(pieces, stocks, new Layout(SPACING, 600, 3));
        assertThat(places(one)).isEqualTo(places(three));
    }

    private static List<String> places(CutPlan plan) {
        return plan.sheets().stream()
                .flatMap(sheet -> sheet.parts().stream())
                .map(part -> part.mark() + " " + part.xMm() + " " + part.yMm() + " " + part.turnRad())
                .toList();
    }

    @Test
    void starsOfAnyShapeHoldWhatTheyTake() {
        Cases.each(9, (random, size) -> star(random));
    }

    private static void star(Random random) {
        int corners = 5 + random.nextInt(12);
        double[] xy = new double[2 * corners];
        for (int c = 0; c < corners; c++) {
            double angle = 2 * Math.PI * (c + 0.7 * random.nextDouble()) / corners;
            double radius = 300 + 500 * random.nextDouble();
            xy[2 * c] = radius * Math.cos(angle);
            xy[2 * c + 1] = radius * Math.sin(angle);
        }
        List<Piece> pieces = List.of(free("A", PANE, 6), grained("B", SMALL, 6));
        CutPlan plan = checked(pieces, List.of(outline(Polygon.of(xy), 1), SHEET), 0);
        assertThat(plan.goal().bound()).isLessThanOrEqualTo(plan.goal().reached());
    }

    @Test
    void anOutlineThatCrossesItselfIsRefused() {
        assertThatThrownBy(() -> outline(Polygon.of(0, 0, 900, 0, 300, 600, 600, 700, 0, 300, 500, -50), 1))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
