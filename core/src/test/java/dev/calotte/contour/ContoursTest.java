package dev.calotte.contour;

import static dev.calotte.contour.Outlines.drawing;
import static dev.calotte.contour.Outlines.length;
import static dev.calotte.contour.Outlines.outer;
import static dev.calotte.contour.Outlines.paths;
import static dev.calotte.contour.Outlines.xy;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.contour.Contours.Closing;
import dev.calotte.contour.Contours.SharedEdges;
import dev.calotte.contour.Contours.Start;
import dev.calotte.document.Circle;
import dev.calotte.document.Drawing;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.testing.Cases;
import java.util.List;
import org.junit.jupiter.api.Test;

class ContoursTest {

    private static final Contours ONCE = Contours.PLAIN.withSharedEdges(SharedEdges.ONCE);
    private static final Contours EDGE = Contours.PLAIN.withStart(Start.EDGE);

    @Test
    void plainContoursLeaveADrawingAsItIs() {
        Drawing drawing = drawing(outer(0, 0, 100, 0, 50, 80));
        assertThat(Contours.PLAIN.of(drawing)).isSameAs(drawing);
    }

    @Test
    void plainContoursRefuseWhatWouldBeCutTwice() {
        Drawing sheet = drawing(outer(0, 0, 100, 0, 50, 80), outer(100, 0, 150, 80, 50, 80));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Contours.PLAIN.of(sheet))
                .withMessageContaining("between A and B");
    }

    @Test
    void sharedEdgeIsCutOnce() {
        Drawing cut = ONCE.of(drawing(outer(0, 0, 100, 0, 50, 80), outer(100, 0, 150, 80, 50, 80)));
        List<Polyline> paths = paths(cut);
        assertThat(paths).hasSize(2);
        assertThat(paths.get(0).isClosed()).isTrue();
        assertThat(paths.get(1).isClosed()).isFalse();
        assertThat(xy(paths.get(1))).containsExactly(100.0, 0.0, 150.0, 80.0, 50.0, 80.0);
        assertThat(cut.title()).isEqualTo("A sheet, shared edges cut once");
        assertThat(DoubleCuts.in(cut)).isEmpty();
    }

    /** The edges are 100 and 60 long and 30 of them lie on each other. */
    @Test
    void edgeThatIsSharedInPartIsCutOnceThere() {
        Drawing cut = ONCE.of(drawing(outer(0, 0, 100, 0, 50, 80), outer(70, 0, 100, -40, 130, 0)));
        assertThat(paths(cut)).hasSize(2);
        assertThat(xy(paths(cut).get(1))).containsExactly(70.0, 0.0, 100.0, -40.0, 130.0, 0.0, 100.0, 0.0);
    }

    @Test
    void edgeWithSeveralNeighboursKeepsWhatIsBetweenThem() {
        Drawing cut = ONCE.of(drawing(
                outer(10, 0, 20, 10, 0, 10),
                outer(10, 0, 50, 0, 50, 5, 20, 5),
                outer(60, 0, 90, 0, 75, 9),
                outer(0, 0, 0, -50, 100, -50, 100, 0)));
        assertThat(paths(cut)).hasSize(5);
        assertThat(xy(paths(cut).get(3)))
                .containsExactly(10.0, 0.0, 0.0, 0.0, 0.0, -50.0, 100.0, -50.0, 100.0, 0.0, 90.0, 0.0);
        assertThat(xy(paths(cut).get(4))).containsExactly(60.0, 0.0, 50.0, 0.0);
    }

    @Test
    void pieceWhoseEdgesAreAllCutKeepsItsOtherShapes() {
        Drawing.Part last = ONCE.of(new Drawing(
                        "x",
                        "",
                        10,
                        10,
                        List.of(
                                new Drawing.Part("A", "", List.of(outer(0, 0, 100, 0, 50, 80))),
                                new Drawing.Part(
                                        "B",
                                        "",
                                        List.of(new Circle(Operation.DRILL, 50, 20, 3), outer(0, 0, 100, 0, 50, 80))))))
                .parts()
                .get(1);
        assertThat(last.mark()).isEqualTo("B");
        assertThat(last.shapes()).containsExactly(new Circle(Operation.DRILL, 50, 20, 3));
    }

    /** A grid of n by n tiles of 40 by 30 mm has 2 n (n + 1) edges. */
    @Test
    void everyEdgeOfAGridIsCutOnce() {
        for (int n = 1; n < 8; n++) {
            Polyline[] tiles = new Polyline[n * n];
            for (int i = 0; i < tiles.length; i++) {
                double x = 40.0 * (i % n);
                int row = i / n;
                double y = 30.0 * row;
                tiles[i] = outer(x, y, x + 40, y, x + 40, y + 30, x, y + 30);
            }
            assertThat(length(ONCE.of(drawing(tiles)))).isCloseTo(70.0 * n * (n + 1), within(1e-6));
        }
    }

    /** Strips of equal height side by side, cut into pieces at places of their own. */
    @Test
    void edgesThatOverlapInAnyWayAreCutOnce() {
        Cases.each(40, (random, size) -> {
            int rows = 1 + size / 4;
            int columns = 1 + size % 5;
            Polyline[] tiles = new Polyline[rows * columns];
            for (int row = 0; row < rows; row++) {
                double[] cuts = random.doubles(columns - 1L, 1, 499).sorted().toArray();
                for (int column = 0; column < columns; column++) {
                    double left = column == 0 ? 0 : cuts[column - 1];
                    double right = column == columns - 1 ? 500 : cuts[column];
                    tiles[row * columns + column] =
                            outer(left, 20.0 * row, right, 20.0 * row, right, 20.0 * (row + 1), left, 20.0 * (row + 1));
                }
            }
            Drawing cut = ONCE.of(drawing(tiles));
            double expected = 500.0 * (rows + 1) + 20.0 * rows * (columns + 1);
            assertThat(length(cut)).isCloseTo(expected, within(0.01));
            assertThat(DoubleCuts.in(cut)).isEmpty();
        });
    }

    @Test
    void outlineBeginsInTheMiddleOfItsLongestEdge() {
        Polyline begun = paths(EDGE.of(drawing(outer(0, 0, 50, 0, 50, 200)))).get(0);
        assertThat(begun.isClosed()).isTrue();
        assertThat(xy(begun)).containsExactly(25.0, 100.0, 0.0, 0.0, 50.0, 0.0, 50.0, 200.0);
    }

    @Test
    void arcsGoRoundWithTheirCorners() {
        double[] corners = {0, 0, 50, 0, 50, 20, 0, 20};
        Polyline begun = paths(EDGE.of(
                        drawing(Polyline.closed(Operation.CUT_OUTER, corners, new double[] {0, 0.25, 0, -0.5}))))
                .get(0);
        assertThat(xy(begun)).startsWith(25.0, 0.0, 50.0, 0.0);
        assertThat(List.of(0, 1, 2, 3, 4)).extracting(begun::bulge).containsExactly(0.0, 0.25, 0.0, -0.5, 0.0);
    }

    @Test
    void openLinesAndOtherWorkBeginWhereTheyDid() {
        Drawing drawing = drawing(
                Polyline.open(Operation.CUT_OUTER, 0, 0, 50, 0),
                Polyline.closed(Operation.SCORE, 0, 10, 50, 10, 50, 20),
                new Circle(Operation.CUT_INNER, 300, 300, 20));
        assertThat(EDGE.of(drawing)).isEqualTo(drawing);
    }

    @Test
    void chordsLieWithinTheToleranceOfTheirArcs() {
        Cases.each(60, (random, size) -> {
            double tolerance = 0.001 + random.nextDouble();
            double bulge = (random.nextBoolean() ? 1 : -1) * random.nextDouble() * 2;
            Polyline round = Polyline.closed(
                    Operation.CUT_OUTER, new double[] {0, 0, 10.0 * size, 0, 0, 500}, new double[] {bulge, 0, 0});
            Polyline flat = paths(Contours.PLAIN.withFlatten(tolerance).of(drawing(round)))
                    .get(0);
            double x = round.arc(0).orElseThrow().xMm();
            double y = round.arc(0).orElseThrow().yMm();
            double radius = round.arc(0).orElseThrow().radiusMm();
            assertThat(flat.size()).isGreaterThanOrEqualTo(3);
            for (int i = 0; i < flat.size() - 2; i++) {
                double middleX = (flat.x(i) + flat.x(i + 1)) / 2;
                double middleY = (flat.y(i) + flat.y(i + 1)) / 2;
                assertThat(StrictMath.hypot(flat.x(i) - x, flat.y(i) - y)).isCloseTo(radius, within(1e-8 * radius));
                assertThat(radius - StrictMath.hypot(middleX - x, middleY - y)).isBetween(-1e-9, tolerance * 1.000001);
                assertThat(flat.bulge(i)).isZero();
            }
        });
    }

    @Test
    void circlesStayCircles() {
        Drawing drawing = drawing(new Circle(Operation.DRILL, 20, 20, 4));
        assertThat(Contours.PLAIN.withFlatten(0.1).of(drawing)).isEqualTo(drawing);
    }

    @Test
    void choicesThatExcludeEachOtherAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ONCE.withStart(Start.EDGE))
                .withMessageContaining("not closed");
        assertThatIllegalArgumentException().isThrownBy(() -> Contours.PLAIN.withFlatten(0.0009));
        assertThatIllegalArgumentException().isThrownBy(() -> Contours.PLAIN.withFlatten(Double.NaN));
    }

    @Test
    void aChangeLeavesTheRest() {
        Contours all = EDGE.withFlatten(0.05);
        assertThat(all.start()).isEqualTo(Start.EDGE);
        assertThat(all.flattenMm()).hasValue(0.05);
        assertThat(all.withStart(Start.CORNER).flattenMm()).hasValue(0.05);
        assertThat(ONCE.withFlatten(1).sharedEdges()).isEqualTo(SharedEdges.ONCE);
        assertThat(EDGE.withClosing(Closing.CORNER).withFlatten(1).closing()).isEqualTo(Closing.CORNER);
    }
}
