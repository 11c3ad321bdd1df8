package dev.calotte.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIOException;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.document.Circle;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

class BorderTest {

    private static final Polyline SQUARE = square(Operation.CUT_OUTER, 0, 100);

    private static Polyline square(Operation operation, double from, double to) {
        return Polyline.closed(operation, from, from, to, from, to, to, from, to);
    }

    private static void assertRefused(String why, Shape... shapes) {
        assertThatIOException().isThrownBy(() -> Border.of(List.of(shapes))).withMessageContaining(why);
    }

    @Test
    void theOneOutlineIsTaken() throws IOException {
        Polyline open = Polyline.open(Operation.REF, 0, 0, 50, 0);
        Polyline border = Border.of(List.of(open, SQUARE, square(Operation.ENGRAVE, 10, 20)));
        assertThat(border.size()).isEqualTo(4);
        assertThat(border.x(2)).isEqualTo(100);
    }

    @Test
    void aDiscBecomesAPolygonInsideIt() throws IOException {
        Polyline border = Border.of(List.of(new Circle(Operation.CUT_OUTER, 10, 20, 500)));
        for (int c = 0; c < border.size(); c++) {
            double dx = border.x(c) - 10;
            double dy = border.y(c) - 20;
            assertThat(Math.sqrt(dx * dx + dy * dy)).isCloseTo(500, within(1e-9));
        }
        // chords of 500 mm circles that lie 0.2 mm inside span 3.24 degrees: 112 or a few more for thirds
        assertThat(border.size()).isBetween(112, 116);
    }

    @Test
    void whatIsNotOneOutlineIsRefused() {
        assertRefused("no outline");
        assertRefused("no outline", square(Operation.REF, 0, 5));
        assertRefused("more than one outline", SQUARE, square(Operation.CUT_OUTER, 200, 250));
        assertRefused("has a hole, at (40, 40) mm", square(Operation.CUT_OUTER, 40, 60), SQUARE);
        assertRefused("has a hole", SQUARE, new Circle(Operation.DRILL, 50, 50, 4));
        assertRefused("begins at (3, 4) mm is open", SQUARE, Polyline.open(Operation.CUT_OUTER, 3, 4, 5, 6));
    }

    @Test
    void tooManyCornersAreRefused() {
        double[] xy = new double[2 * 1001];
        for (int c = 0; c < 1001; c++) {
            xy[2 * c] = 1000 * Math.cos(2 * Math.PI * c / 1001);
            xy[2 * c + 1] = 1000 * Math.sin(2 * Math.PI * c / 1001);
        }
        assertRefused("1001 corners", Polyline.closed(Operation.CUT_OUTER, xy));
    }
}
