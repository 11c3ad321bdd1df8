package dev.calotte.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.check.ExpectedDrawing.Cut;
import dev.calotte.contour.Contours;
import dev.calotte.document.Drawing;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import dev.calotte.drawing.CoverPatterns;
import dev.calotte.drawing.CoverSheets;
import dev.calotte.drawing.Kerf;
import dev.calotte.drawing.PanelPatterns;
import dev.calotte.parts.Parts;
import dev.calotte.units.UnitSystem;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Drawings as the record has them: of pieces alone, for a cutter, with edges that are cut once, in another format. */
class ExpectedDrawingTest {

    /** Of six decimals. */
    private static final double WITHIN = 2e-6;

    private static final RecordedCover BOARDS = RecordedCovers.of(RecordedCovers.BOARDS_PLAN);
    private static final Drawing SHEET =
            CoverSheets.of(RecordedCovers.BOARDS_PLAN, UnitSystem.METRIC).get(0);
    private static final ExpectedDrawing FIRST = expected(BOARDS, 0);
    private static final List<Shape> SHAPES = Shapes.of(SHEET);
    private static final int CUT = Shapes.first(SHAPES, Operation.CUT_OUTER);
    private static final int HOLE = Shapes.first(SHAPES, Operation.DRILL);

    private static ExpectedDrawing expected(RecordedCover cover, int sheet) {
        return ExpectedDrawing.of(cover, cover.sheets().get(sheet), WITHIN);
    }

    private static List<String> found(ExpectedDrawing expected, List<Shape> shapes) {
        return Found.by(findings -> DrawingCheck.of(expected, shapes, findings));
    }

    @ParameterizedTest
    @MethodSource("dev.calotte.check.CheckedDomes#all")
    void nothingIsFoundOnPanelsWithoutACover(Parts parts) {
        RecordedDome dome = Records.dome(parts);
        List<Drawing> drawings = PanelPatterns.of(parts, UnitSystem.METRIC);
        for (int i = 0; i < drawings.size(); i++) {
            ExpectedDrawing expected = ExpectedDrawing.of(dome.panelKinds().get(i), WITHIN);
            assertThat(found(expected, Shapes.of(drawings.get(i)))).isEmpty();
        }
    }

    /** Half the width of the cut further outside, holes as much smaller. */
    @Test
    void nothingIsFoundInDrawingsForACutter() {
        Kerf kerf = new Kerf(0.4);
        assertThat(found(FIRST.withCutter(0.4, false), Shapes.of(kerf.of(SHEET))))
                .isEmpty();
        assertThat(found(FIRST, Shapes.of(kerf.of(SHEET)))).isNotEmpty();
    }

    /** Two triangles that share the side from 100, 0 to 50, 80. */
    @Test
    void sharedEdgesAreCutOnce() {
        Ring one = Ring.of(List.of(0.0, 0.0, 100.0, 0.0, 50.0, 80.0));
        Ring other = Ring.of(List.of(100.0, 0.0, 150.0, 80.0, 50.0, 80.0));
        ExpectedDrawing expected = new ExpectedDrawing(
                List.of(new Cut("P1-1.01", one, List.of()), new Cut("P1-1.02", other, List.of())),
                Optional.of(ExpectedDrawing.EVERYWHERE),
                0,
                true,
                WITHIN);
        Drawing each = new Drawing(
                "sheets/x-01",
                "",
                1000,
                1000,
                List.of(
                        new Drawing.Part(
                                "P1-1.01", "", List.of(Polyline.closed(Operation.CUT_OUTER, 0, 0, 100, 0, 50, 80))),
                        new Drawing.Part(
                                "P1-1.02",
                                "",
                                List.of(Polyline.closed(Operation.CUT_OUTER, 100, 0, 150, 80, 50, 80)))));
        List<Shape> once = Shapes.of(
                Contours.PLAIN.withSharedEdges(Contours.SharedEdges.ONCE).of(each));
        assertThat(once)
                .anySatisfy(shape -> assertThat(((Polyline) shape).isClosed()).isFalse());
        assertThat(found(expected, once)).isEmpty();
        assertThat(found(expected, Shapes.of(each))).containsExactly("DOUBLE_CUT");
        assertThat(found(expected, once.subList(0, 1))).containsExactly("MISSING P1-1.02", "MISSING P1-1.02");
        assertThat(found(expected, Found.with(once, Polyline.open(Operation.CUT_OUTER, 0, 200, 50, 200))))
                .containsExactly("FOREIGN");
    }

    /** The direction of half a millimetre hangs on its last digit, and far away it points beside the long side. */
    @Test
    void aSideThatIsCutInStrokesOfWhichOneIsShortBelongsToItsPiece() {
        Ring outline = Ring.of(List.of(0.0, 0.0, 2000.0, 0.0, 1000.0, 800.0));
        ExpectedDrawing expected = new ExpectedDrawing(
                List.of(new Cut("P1-1.01", outline, List.of())),
                Optional.of(ExpectedDrawing.EVERYWHERE),
                0,
                true,
                WITHIN);
        List<Shape> strokes = List.of(
                Polyline.open(Operation.CUT_OUTER, 2000, 0, 1000, 800, 0, 0, 1000, 0),
                Polyline.open(Operation.CUT_OUTER, 1000, 0, 1000.5, 0.00005),
                Polyline.open(Operation.CUT_OUTER, 1000.5, 0.00005, 2000, 0));

        assertThat(found(expected, strokes)).isEmpty();
    }

    /** With one outline only, too, that is not called scaled, but what it is. */
    @Test
    void anotherOutlineAloneIsNotCalledScaled() {
        ExpectedDrawing panel = ExpectedDrawing.of(
                Records.dome(CheckedDomes.ICOSAHEDRON).panelKinds().get(0), WITHIN);
        List<Shape> shapes = Shapes.of(
                PanelPatterns.of(CheckedDomes.ICOSAHEDRON, UnitSystem.METRIC).get(0));
        int cut = Shapes.first(shapes, Operation.CUT_OUTER);
        Polyline outline = (Polyline) shapes.get(cut);
        List<Shape> other = Found.changed(
                shapes,
                cut,
                shape -> Shapes.moved(shape, at -> at.getX() == outline.x(2) ? at.add(new Vector2D(0, 2)) : at));
        assertThat(found(panel, other)).containsExactly("DIFFERENT P1");
    }

    /** A pattern alone may lie anywhere, with its holes. */
    @Test
    void aPatternMayLieAnywhereButNotItsHolesAlone() {
        List<Drawing> patterns = CoverPatterns.of(RecordedCovers.BOARDS_PLAN.fit(), UnitSystem.METRIC);
        ExpectedDrawing expected = ExpectedDrawing.of(BOARDS.pieces().get(0), WITHIN);
        UnaryOperator<Vector2D> far = at -> at.add(new Vector2D(500, -80));
        List<Shape> shapes = Shapes.of(patterns.get(0));
        assertThat(found(
                        expected,
                        shapes.stream().map(shape -> Shapes.moved(shape, far)).toList()))
                .isEmpty();
        List<Shape> holes = shapes.stream()
                .map(shape -> shape.operation() == Operation.DRILL ? Shapes.moved(shape, far) : shape)
                .toList();
        assertThat(found(expected, holes))
                .contains("MISSING " + BOARDS.pieces().get(0).mark())
                .anySatisfy(each -> assertThat(each).startsWith("FOREIGN x "));
        List<Shape> none = shapes.stream()
                .filter(shape -> shape.operation() != Operation.CUT_OUTER)
                .toList();
        assertThat(found(expected, none))
                .containsExactly("MISSING " + BOARDS.pieces().get(0).mark());
    }

    @Test
    void partsOfUnknownPatternsAreLeftOut() {
        String gone = BOARDS.sheets().get(0).parts().get(0).mark();
        RecordedCover cover = RecordedCovers.with(
                BOARDS,
                BOARDS.pieces().stream()
                        .filter(piece -> !piece.mark().equals(gone))
                        .toList());
        long of = BOARDS.sheets().get(0).parts().stream()
                .filter(part -> part.mark().equals(gone))
                .count();
        assertThat(of).isPositive();
        assertThat(expected(cover, 0).cuts()).hasSize(FIRST.cuts().size() - (int) of);
    }

    /** Holes of a drawing that the record does not hold are not compared. */
    @Test
    void theSameDrawingInAnotherFormatIsComparedByItsOutlines() {
        ExpectedDrawing like = ExpectedDrawing.like(SHAPES, 2e-4);
        assertThat(like.cuts()).hasSameSizeAs(FIRST.cuts());
        assertThat(found(like, SHAPES)).isEmpty();
        assertThat(found(like, Found.without(SHAPES, HOLE))).isEmpty();
        assertThat(found(like, Found.without(SHAPES, CUT))).containsExactly("MISSING outline 1");
        assertThat(found(
                        like.within(2),
                        Found.changed(SHAPES, CUT, s -> Shapes.moved(s, at -> at.add(new Vector2D(1, 1))))))
                .isEmpty();
    }

    /** It crosses itself in the middle; what is drawn cannot be like it, and that is found. */
    @Test
    void anOutlineThatNoToolIsLedRoundIsFound() {
        Ring bow = Ring.of(List.of(0.0, 0.0, 10.0, 10.0, 10.0, 0.0, 0.0, 12.0));
        ExpectedDrawing expected = new ExpectedDrawing(
                        List.of(new Cut("P1", bow, List.of())), Optional.empty(), 0, false, WITHIN)
                .withCutter(0.2, false);
        assertThat(found(expected, List.of(Polyline.closed(Operation.CUT_OUTER, 0, 0, 10, 0, 10, 10, 0, 12))))
                .containsExactly("DIFFERENT P1");
    }

    /** An outline that runs clockwise is led outside of it too. */
    @Test
    void theToolIsLedOutsideWhicheverWayAnOutlineRuns() {
        Ring square = Ring.of(List.of(0.0, 0.0, 10.0, 0.0, 10.0, 10.0, 0.0, 10.0));
        for (Ring ring : List.of(square, square.reversed())) {
            Cut cut = new Cut("P1", ring, List.of(new RecordedCover.Hole(5, 5, 4)));
            ExpectedDrawing drawing =
                    new ExpectedDrawing(List.of(cut), Optional.empty(), 0, false, WITHIN).withCutter(2, false);
            assertThat(drawing.led().get(0).outline().area()).isCloseTo(144, within(1e-9));
            assertThat(drawing.led().get(0).holes()).containsExactly(new RecordedCover.Hole(5, 5, 2));
        }
    }
}
