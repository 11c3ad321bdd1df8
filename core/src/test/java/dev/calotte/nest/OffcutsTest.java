package dev.calotte.nest;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.stock.Sheet;
import dev.calotte.stock.Terms;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What two straight cuts leave of a sheet of 1000 by 600 with a margin of 10, five from the parts; all by hand. */
class OffcutsTest {

    private static final Field FIELD = Field.of(0, new Sheet(1000, 600, 10, Terms.OPEN));

    private static ConvexPolygon upTo(double right, double top) {
        return ConvexPolygon.of(10, 10, right, 10, right, top, 10, top);
    }

    private static List<Offcut> left(double leastMm, ConvexPolygon... outlines) {
        return new Offcuts(FIELD, 1000, 5).of(List.of(outlines), leastMm);
    }

    /** A cut across at 605 leaves 385 by 580 and 595 by 285; one along at 305 leaves 980 by 285 and 385 by 290. */
    @Test
    void theFirstCutIsTheOneThatLeavesTheLargestRectangle() {
        assertThat(left(50, upTo(600, 300)))
                .containsExactly(new Offcut(10, 305, 980, 285), new Offcut(605, 10, 385, 290));
        assertThat(left(50, upTo(300, 300)))
                .containsExactly(new Offcut(305, 10, 685, 580), new Offcut(10, 305, 290, 285));
    }

    @Test
    void whatIsNarrowerThanAPartIsNotKept() {
        assertThat(left(285, upTo(600, 300)))
                .containsExactly(new Offcut(10, 305, 980, 285), new Offcut(605, 10, 385, 290));
        assertThat(left(285.1, upTo(600, 300))).containsExactly(new Offcut(605, 10, 385, 580));
        assertThat(left(386, upTo(600, 300))).isEmpty();
    }

    @Test
    void allPartsAreCleared() {
        assertThat(left(50, upTo(600, 100), upTo(100, 300))).isEqualTo(left(50, upTo(600, 300)));
        assertThat(left(50, upTo(100, 300), upTo(600, 100))).isEqualTo(left(50, upTo(600, 300)));
    }

    /** Where parts reach up to the margin the cut would lie in it: nothing is left there. */
    @Test
    void besideAPartThatTouchesTheMarginNothingIsLeft() {
        assertThat(left(1, upTo(990, 300))).containsExactly(new Offcut(10, 305, 980, 285));
        assertThat(left(1, upTo(600, 590))).containsExactly(new Offcut(605, 10, 385, 580));
        assertThat(left(1, upTo(990, 590))).isEmpty();
    }
}
