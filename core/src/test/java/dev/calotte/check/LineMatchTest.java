package dev.calotte.check;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.document.Circle;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class LineMatchTest {

    private static final List<Shape> SHAPES = List.of(
            Polyline.open(Operation.ENGRAVE, 1, 1, 2, 5, 3, 1),
            Polyline.open(Operation.SCORE, 0, 20, 50, 20),
            Polyline.closed(Operation.CUT_INNER, new double[] {10, 10, 20, 10, 20, 15}, new double[] {0, 0.5, 0}),
            new Circle(Operation.DRILL, 30, 30, 4));

    private static List<String> found(List<Shape> shapes, List<Shape> shown) {
        return Found.by(findings -> LineMatch.of(shapes, "dxf/a.dxf", shown, 2e-4, findings));
    }

    private static List<Shape> with(int at, Shape... others) {
        List<Shape> shapes = new ArrayList<>(SHAPES);
        shapes.remove(at);
        shapes.addAll(List.of(others));
        return shapes;
    }

    /** Another order, another way, another beginning, apart instead of joined, and rounded. */
    @Test
    void theSameLinesOtherwiseJoinedAreTheSame() {
        assertThat(found(SHAPES, SHAPES)).isEmpty();
        assertThat(found(
                        with(
                                0,
                                Polyline.open(Operation.ENGRAVE, 3.0001, 1, 2, 5),
                                Polyline.open(Operation.ENGRAVE, 1, 1, 2, 5.0001)),
                        SHAPES))
                .isEmpty();
        assertThat(found(
                        with(
                                2,
                                Polyline.closed(
                                        Operation.CUT_INNER,
                                        new double[] {20, 15, 20, 10, 10, 10},
                                        new double[] {-0.5, 0, 0})),
                        SHAPES))
                .isEmpty();
    }

    @Test
    void aLineThatIsNotThereIsFoundInEither() {
        List<Shape> less = with(0, Polyline.open(Operation.ENGRAVE, 1, 1, 2, 5));
        assertThat(found(less, SHAPES)).containsExactly("MISSING ENGRAVE x 2.50, y 3.00");
        assertThat(found(SHAPES, less)).containsExactly("FOREIGN ENGRAVE x 2.50, y 3.00");
    }

    @Test
    void aLineThatIsElsewhereOrWorkedOtherwiseIsFound() {
        assertThat(found(with(1, Polyline.open(Operation.SCORE, 0, 20.001, 50, 20)), SHAPES))
                .containsExactly("MISSING SCORE x 25.00, y 20.00");
        assertThat(found(with(1, Polyline.open(Operation.ENGRAVE, 0, 20, 50, 20)), SHAPES))
                .containsExactly("MISSING SCORE x 25.00, y 20.00");
        assertThat(found(with(3, new Circle(Operation.DRILL, 30, 30, 4.01)), SHAPES))
                .hasSize(1);
        assertThat(found(
                        with(
                                2,
                                Polyline.closed(
                                        Operation.CUT_INNER,
                                        new double[] {10, 10, 20, 10, 20, 15},
                                        new double[] {0, -0.5, 0})),
                        SHAPES))
                .hasSize(1);
    }

    @Test
    void allThatLiesElsewhereIsCalledMoved() {
        List<Shape> one = List.of(Polyline.open(Operation.REF, 10, 10, 110, 10));
        List<Shape> other = List.of(Polyline.open(Operation.REF, 17, 10, 117, 10));
        assertThat(found(one, other)).containsExactly("MOVED");
        assertThat(Found.by(findings -> DrawingCheck.origin(one, 10, 2e-6, findings)))
                .isEmpty();
        assertThat(Found.by(findings -> DrawingCheck.origin(other, 10, 2e-6, findings)))
                .containsExactly("MOVED");
        assertThat(Found.by(findings -> DrawingCheck.origin(SHAPES, 10, 2e-6, findings)))
                .isEmpty();
    }

    /** As many at one place as no drawing has are not compared for ever. */
    @Test
    void tenThousandLinesAtOnePlaceAreCompared() {
        List<Shape> many = new ArrayList<>();
        List<Shape> others = new ArrayList<>();
        for (int i = 1; i <= 10_000; i++) {
            many.add(Polyline.open(Operation.ENGRAVE, -i, 0, i, 0));
            others.add(Polyline.open(Operation.ENGRAVE, 0, -i, 0, i));
        }
        assertThat(found(many, others)).hasSize(1);
    }
}
