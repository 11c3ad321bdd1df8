package dev.calotte.contour;

import static dev.calotte.contour.Outlines.drawing;
import static dev.calotte.contour.Outlines.outer;
import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.document.Circle;
import dev.calotte.document.Drawing;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.testing.Cases;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class DoubleCutsTest {

    @Test
    void trianglesEdgeToEdgeAreCutTwiceThere() {
        Drawing sheet = drawing(outer(0, 0, 100, 0, 50, 80), outer(100, 0, 150, 80, 50, 80));
        assertThat(DoubleCuts.in(sheet)).hasValue(new DoubleCuts("sheets/x-01", 1, "A", "B", 100, 0));
        assertThat(DoubleCuts.in(sheet).orElseThrow().text())
                .isEqualTo("an edge would be cut twice, between A and B at x 100 mm, y 0 mm");
    }

    @Test
    void aPartOfAnEdgeIsEnough() {
        assertThat(DoubleCuts.in(drawing(outer(0, 0, 100, 0, 50, 80), outer(99, 0, 180, 0, 140, -50))))
                .isPresent();
        assertThat(DoubleCuts.in(drawing(outer(0, 0, 100, 0, 50, 80), outer(20, 0, 30, 0, 25, -5))))
                .isPresent();
    }

    @Test
    void piecesThatMeetInAPointAreNot() {
        assertThat(DoubleCuts.in(drawing(outer(0, 0, 100, 0, 50, 80), outer(100, 0, 180, 0, 140, -50))))
                .isEmpty();
        assertThat(DoubleCuts.in(drawing(outer(0, 0, 100, 0, 50, 80), outer(60, 0, 80, -30, 40, -30))))
                .isEmpty();
    }

    @Test
    void piecesApartByMoreThanAThousandthAreNot() {
        assertThat(DoubleCuts.in(drawing(outer(0, 0, 100, 0, 50, 80), outer(0, -0.002, 50, -80, 100, -0.002))))
                .isEmpty();
        assertThat(DoubleCuts.in(drawing(outer(0, 0, 100, 0, 50, 80), outer(0, -0.0009, 50, -80, 100, -0.0009))))
                .isPresent();
    }

    @Test
    void anOutlineThatGoesBackOnItselfIs() {
        assertThat(DoubleCuts.in(drawing(outer(0, 0, 100, 0, 150, 0, 100, 0.0005, 50, 80))))
                .isPresent();
    }

    @Test
    void whatIsNotCutMayLieOnACut() {
        assertThat(DoubleCuts.in(drawing(
                        outer(0, 0, 100, 0, 50, 80),
                        Polyline.closed(Operation.REF, 0, 0, 100, 0, 50, 80),
                        Polyline.open(Operation.SCORE, 0, 0, 100, 0))))
                .isEmpty();
    }

    @Test
    void holesThatAreDrilledTwiceAre() {
        Circle hole = new Circle(Operation.DRILL, 20, 30, 4);
        assertThat(DoubleCuts.in(drawing(hole, new Circle(Operation.DRILL, 20.0004, 30, 4))))
                .isPresent();
        assertThat(DoubleCuts.in(drawing(hole, new Circle(Operation.DRILL, 20, 30, 3))))
                .isEmpty();
        assertThat(DoubleCuts.in(drawing(hole, new Circle(Operation.DRILL, 20, 31, 4))))
                .isEmpty();
    }

    /** Two discs cut in halves, turned against each other, share an arc; the halves of one disc share their ends only. */
    @Test
    void arcsOfOneCircleAreAsFarAsTheyOverlap() {
        Polyline left =
                Polyline.closed(Operation.CUT_OUTER, new double[] {0, 10, 0, -10, 5, 0}, new double[] {1, 0, 0});
        Polyline right =
                Polyline.closed(Operation.CUT_OUTER, new double[] {0, -10, 0, 10, 6, 0}, new double[] {1, 0, 0});
        Polyline below =
                Polyline.closed(Operation.CUT_OUTER, new double[] {-10, 0, 10, 0, 0, 5}, new double[] {1, 0, 0});
        assertThat(DoubleCuts.in(drawing(left, right))).isEmpty();
        assertThat(DoubleCuts.in(drawing(left, below))).isPresent();
        assertThat(DoubleCuts.in(drawing(below, right))).isPresent();
    }

    /** Tiles of a grid, in any order, share each edge between two of them, and no other. */
    @Test
    void everySharedEdgeOfAGridIsFound() {
        Cases.each(12, (random, size) -> {
            double turn = random.nextDouble() * 6;
            double far = random.nextDouble() * 1e4;
            List<Polyline> tiles = new ArrayList<>();
            for (int row = 0; row < size; row++) {
                for (int column = 0; column < size; column++) {
                    tiles.add(tile(column, row, turn, far));
                }
            }
            Collections.shuffle(tiles, random);
            int shared = 2 * size * (size - 1);
            assertThat(DoubleCuts.in(drawing(tiles.toArray(Polyline[]::new)))
                            .map(DoubleCuts::count)
                            .orElse(0))
                    .isEqualTo(shared);
        });
    }

    private static Polyline tile(int column, int row, double turn, double far) {
        double[] corners = {0, 0, 1, 0, 1, 1, 0, 1};
        double[] xy = new double[8];
        for (int i = 0; i < 8; i += 2) {
            double x = 40 * (column + corners[i]);
            double y = 30 * (row + corners[i + 1]);
            xy[i] = far + x * StrictMath.cos(turn) - y * StrictMath.sin(turn);
            xy[i + 1] = x * StrictMath.sin(turn) + y * StrictMath.cos(turn) - far;
        }
        return outer(xy);
    }
}
