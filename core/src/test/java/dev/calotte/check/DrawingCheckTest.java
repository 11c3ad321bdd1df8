package dev.calotte.check;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.check.ExpectedDrawing.Cut;
import dev.calotte.choose.CoverPlan;
import dev.calotte.document.Circle;
import dev.calotte.document.Drawing;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import dev.calotte.drawing.CoverPatterns;
import dev.calotte.drawing.CoverSheets;
import dev.calotte.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class DrawingCheckTest {

    /** Of six decimals. */
    private static final double WITHIN = 2e-6;

    private static final RecordedCover BOARDS = RecordedCovers.of(RecordedCovers.BOARDS_PLAN);
    private static final List<Drawing> SHEETS = CoverSheets.of(RecordedCovers.BOARDS_PLAN, UnitSystem.METRIC);
    private static final ExpectedDrawing FIRST = expected(BOARDS, 0);
    private static final List<Shape> SHAPES = Shapes.of(SHEETS.get(0));

    private static ExpectedDrawing expected(RecordedCover cover, int sheet) {
        return ExpectedDrawing.of(cover, cover.sheets().get(sheet), WITHIN);
    }

    private static List<String> found(ExpectedDrawing expected, List<Shape> shapes) {
        return Found.by(findings -> DrawingCheck.of(expected, shapes, findings));
    }

    private static final int CUT = Shapes.first(SHAPES, Operation.CUT_OUTER);
    private static final int HOLE = Shapes.first(SHAPES, Operation.DRILL);
    private static final String MARK = FIRST.cuts().get(0).mark();

    static Stream<CoverPlan> plans() {
        return Stream.of(
                RecordedCovers.BOARDS_PLAN,
                RecordedCovers.CLOTH_PLAN,
                RecordedCovers.HOLLOW_PLAN,
                RecordedCovers.HANDED_PLAN);
    }

    @ParameterizedTest
    @MethodSource("plans")
    void nothingIsFoundOnSheetsAndPatterns(CoverPlan plan) {
        RecordedCover cover = RecordedCovers.of(plan);
        List<Drawing> sheets = CoverSheets.of(plan, UnitSystem.METRIC);
        for (int i = 0; i < sheets.size(); i++) {
            assertThat(found(expected(cover, i), Shapes.of(sheets.get(i)))).isEmpty();
        }
        List<Drawing> patterns = CoverPatterns.of(plan.fit(), UnitSystem.METRIC);
        assertThat(patterns).hasSameSizeAs(cover.pieces());
        for (int i = 0; i < patterns.size(); i++) {
            ExpectedDrawing expected = ExpectedDrawing.of(cover.pieces().get(i), WITHIN);
            assertThat(found(expected, Shapes.of(patterns.get(i)))).isEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {25.4, 1 / 25.4, 1.001, 0.9999})
    void aScaledDrawingIsFoundByItsReference(double scale) {
        List<Shape> scaled = SHAPES.stream()
                .map(shape -> Shapes.moved(shape, at -> at.scalarMultiply(scale)))
                .toList();
        assertThat(found(FIRST, scaled)).containsExactly("SCALED");
        assertThat(Found.by(findings -> DrawingCheck.alone(scaled, findings))).containsExactly("SCALED");
    }

    @ParameterizedTest
    @ValueSource(doubles = {25.4, 1.001})
    void aScaledDrawingWithoutAReferenceIsFoundByItsOutlines(double scale) {
        List<Shape> scaled = SHAPES.stream()
                .filter(shape -> shape.operation() != Operation.REF)
                .map(shape -> Shapes.moved(shape, at -> at.scalarMultiply(scale)))
                .toList();
        assertThat(found(FIRST, scaled)).containsExactly("SCALED");
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-4, 0.01, 700})
    void aMovedOutlineIsFound(double mm) {
        List<Shape> shapes =
                Found.changed(SHAPES, CUT, shape -> Shapes.moved(shape, at -> at.add(new Vector2D(0, mm))));
        assertThat(found(FIRST, shapes)).contains("MOVED " + MARK);
    }

    /** A panel of one hand as one of the other, at its place. */
    @Test
    void aMirroredOutlineIsFound() {
        RecordedCover cover = RecordedCovers.of(RecordedCovers.HANDED_PLAN);
        List<Shape> shapes = Shapes.of(
                CoverSheets.of(RecordedCovers.HANDED_PLAN, UnitSystem.METRIC).get(0));
        List<Cut> cuts = expected(cover, 0).cuts();
        Cut cut = cuts.stream()
                .filter(each -> each.mark().matches("P\\d+[LR]-.*"))
                .findFirst()
                .orElseThrow();
        Vector2D middle = cut.outline().middle();
        Shape outline = shapes.stream()
                .filter(shape -> shape.operation() == Operation.CUT_OUTER)
                .skip(cuts.indexOf(cut))
                .findFirst()
                .orElseThrow();
        List<Shape> mirrored = Found.changed(
                shapes,
                shapes.indexOf(outline),
                shape -> Shapes.moved(shape, at -> new Vector2D(2 * middle.getX() - at.getX(), at.getY())));
        assertThat(found(expected(cover, 0), mirrored)).contains("MIRRORED " + cut.mark());
    }

    @Test
    void anotherOutlineAtThePlaceIsFound() {
        List<Shape> shapes = Found.changed(
                SHAPES,
                CUT,
                shape -> Shapes.moved(
                        shape,
                        at -> at.distance(FIRST.cuts().get(0).outline().corner(0)) < 1
                                ? at.add(new Vector2D(3, 3))
                                : at));
        assertThat(found(FIRST, shapes)).containsExactly("DIFFERENT " + MARK);
    }

    @Test
    void anOutlineThatIsGoneIsFound() {
        assertThat(found(FIRST, Found.without(SHAPES, CUT))).contains("MISSING " + MARK);
    }

    @Test
    void anOutlineThatIsThereTwiceIsFound() {
        assertThat(found(FIRST, Found.with(SHAPES, SHAPES.get(CUT))))
                .hasSize(2)
                .anySatisfy(each -> assertThat(each).startsWith("DOUBLED x "))
                .contains("DOUBLE_CUT");
    }

    @Test
    void aForeignOutlineIsFoundWhereItLies() {
        Shape foreign = Polyline.closed(Operation.CUT_OUTER, 0, 0, 2, 0, 2, 4);
        assertThat(found(FIRST, Found.with(SHAPES, foreign))).containsExactly("FOREIGN x 1, y 2");
    }

    @Test
    void anOutlineThatDoesNotCloseIsFound() {
        Shape open = Polyline.open(Operation.CUT_INNER, 1, 2, 3, 2);
        assertThat(found(FIRST, Found.with(SHAPES, open))).containsExactly("DIFFERENT x 1, y 2");
    }

    @Test
    void anotherBorderIsFound() {
        int border = Shapes.first(SHAPES, Operation.SHEET);
        assertThat(found(
                        FIRST,
                        Found.changed(
                                SHAPES, border, shape -> Polyline.closed(Operation.SHEET, 0, 0, 9, 0, 9, 9, 0, 9))))
                .containsExactly("DIFFERENT SHEET");
        assertThat(found(FIRST, Found.without(SHAPES, border))).containsExactly("DIFFERENT SHEET");
    }

    @Test
    void anOutlineBeyondTheStockIsFoundWhereItLies() {
        double x = -FIRST.cuts().get(0).outline().least().getX() - 20;
        List<Shape> shapes = Found.changed(SHAPES, CUT, shape -> Shapes.moved(shape, at -> at.add(new Vector2D(x, 0))));
        Vector2D at = FIRST.cuts().get(0).outline().middle().add(new Vector2D(x, 0));
        assertThat(found(FIRST, shapes))
                .contains("OUTSIDE x " + Findings.text(at.getX()) + ", y " + Findings.text(at.getY()));
    }

    @Test
    void aHoleThatIsGoneIsFound() {
        assertThat(found(FIRST, Found.without(SHAPES, HOLE))).containsExactly("MISSING " + MARK);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-4, 10})
    void aMovedHoleIsFound(double mm) {
        Circle hole = (Circle) SHAPES.get(HOLE);
        List<Shape> shapes =
                Found.changed(SHAPES, HOLE, shape -> Shapes.moved(shape, at -> at.add(new Vector2D(mm, 0))));
        assertThat(found(FIRST, shapes))
                .containsExactly(
                        "MISSING " + MARK,
                        "FOREIGN x " + Findings.text(hole.xMm() + mm) + ", y " + Findings.text(hole.yMm()));
    }

    @Test
    void aWiderHoleAndOneTooManyAreFound() {
        Circle hole = (Circle) SHAPES.get(HOLE);
        Circle wider = new Circle(Operation.DRILL, hole.xMm(), hole.yMm(), hole.radiusMm() + 0.5);
        String at = "FOREIGN x " + Findings.text(hole.xMm()) + ", y " + Findings.text(hole.yMm());
        assertThat(found(FIRST, Found.changed(SHAPES, HOLE, shape -> wider))).containsExactly("MISSING " + MARK, at);
        assertThat(found(FIRST, Found.with(SHAPES, new Circle(Operation.DRILL, 3, 4, 2))))
                .containsExactly("FOREIGN x 3, y 4");
    }

    @Test
    void aDrawingAloneIsLookedAtForLinesThatAreCutTwice() {
        assertThat(Found.by(findings -> DrawingCheck.alone(SHAPES, findings))).isEmpty();
        List<Shape> twice = new ArrayList<>(SHAPES);
        twice.add(SHAPES.get(CUT));
        assertThat(Found.by(findings -> DrawingCheck.alone(twice, findings))).containsExactly("DOUBLE_CUT");
    }
}
