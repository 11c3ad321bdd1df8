package dev.calotte.dxf;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.document.Circle;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The dialect of lines, arcs and circles. */
class LinesTest {

    @Test
    void eachSideBeginsWithTheVeryTextThatEndedTheOneBefore() throws IOException {
        List<Tags.Entry> lines = Tags.of(
                        Samples.drawing(Polyline.closed(
                                Operation.CUT_OUTER, 0, 0, 1000.0 / 3, Math.nextUp(700.0 / 9), 5.1234564999, 8)),
                        Dialect.LINES)
                .entities();
        assertThat(lines).hasSize(3).allMatch(line -> line.type().equals("LINE"));
        for (int i = 0; i < 3; i++) {
            assertThat(start(lines.get((i + 1) % 3))).isEqualTo(end(lines.get(i)));
        }
    }

    @Test
    void lineWithTwoEndsIsNotClosed() throws IOException {
        List<Tags.Entry> lines = Tags.of(
                        Samples.drawing(Polyline.open(Operation.SCORE, 1, 2, 3, 4, 5, 5)), Dialect.LINES)
                .entities();
        assertThat(lines).hasSize(2);
        assertThat(start(lines.get(0))).isEqualTo("1.0 2.0 0.0");
        assertThat(end(lines.get(1))).isEqualTo("5.0 5.0 0.0");
    }

    @Test
    void thereAreNoPolylines() throws IOException {
        assertThat(Tags.of(Samples.letterF(), Dialect.LINES).entities())
                .extracting(Tags.Entry::type)
                .containsOnly("LINE", "CIRCLE");
    }

    @Test
    void holeStaysACircle() throws IOException {
        Tags.Entry hole = Tags.of(Samples.drawing(new Circle(Operation.DRILL, 7, 6.5, 4.25)), Dialect.LINES)
                .entities()
                .get(0);
        assertThat(hole.type()).isEqualTo("CIRCLE");
        assertThat(hole.number(40)).isEqualTo(4.25);
    }

    /** From (10, 0) a quarter turn about the origin to (0, 10), a straight side, and half a turn below back. */
    @Test
    void arcRunsCounterClockwiseFromItsStart() throws IOException {
        double[] corners = {10, 0, 0, 10, -10, 0};
        List<Tags.Entry> sides = Tags.of(
                        Samples.drawing(
                                Polyline.closed(Operation.CUT_OUTER, corners, new double[] {Math.sqrt(2) - 1, 0, 1})),
                        Dialect.LINES)
                .entities();
        assertThat(sides).extracting(Tags.Entry::type).containsExactly("ARC", "LINE", "ARC");
        assertThat(List.of(10, 20, 30, 40, 50, 51))
                .extracting(sides.get(0)::number)
                .containsExactly(0.0, 0.0, 0.0, 10.0, 0.0, 90.0);
        assertThat(List.of(10, 20, 30, 40, 50, 51))
                .extracting(sides.get(2)::number)
                .containsExactly(0.0, 0.0, 0.0, 10.0, 180.0, 0.0);
    }

    /** The same quarter turn on its way back: DXF knows it by the same start and end. */
    @Test
    void arcThatIsCutClockwiseBeginsWhereItsSideEnds() throws IOException {
        double[] corners = {0, 10, 10, 0, 12, 12};
        Tags.Entry arc = Tags.of(
                        Samples.drawing(
                                Polyline.closed(Operation.CUT_OUTER, corners, new double[] {1 - Math.sqrt(2), 0, 0})),
                        Dialect.LINES)
                .entities()
                .get(0);
        assertThat(List.of(10, 20, 40, 50, 51)).extracting(arc::number).containsExactly(0.0, 0.0, 10.0, 0.0, 90.0);
    }

    private static String start(Tags.Entry line) {
        return line.text(10) + " " + line.text(20) + " " + line.text(30);
    }

    private static String end(Tags.Entry line) {
        return line.text(11) + " " + line.text(21) + " " + line.text(31);
    }
}
