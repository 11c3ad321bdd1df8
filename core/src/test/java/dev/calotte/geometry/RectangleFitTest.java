package dev.calotte.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.testing.Cases;
import java.util.Random;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

class RectangleFitTest {

    private static final double STEP = Math.PI / 2000;

    /** A convex polygon of three to seven corners on an ellipse. */
    private static ConvexPolygon polygon(Random random) {
        int n = 3 + random.nextInt(5);
        double turn = random.nextDouble();
        double[] xy = new double[2 * n];
        for (int i = 0; i < n; i++) {
            double angle = 2 * Math.PI * (i + 0.8 * random.nextDouble()) / n + turn;
            xy[2 * i] = 1000 * Math.cos(angle);
            xy[2 * i + 1] = 600 * Math.sin(angle);
        }
        return ConvexPolygon.of(xy);
    }

    @Test
    void noAngleThatIsTriedDoesBetterAndTheBestComesNear() {
        Cases.each(60, (random, size) -> {
            ConvexPolygon polygon = polygon(random);
            double length = 500 + 2000 * random.nextDouble();
            double width = 300 + 1200 * random.nextDouble();
            double missing = Double.POSITIVE_INFINITY;
            double scale = 0;
            for (double turn = 0; turn < Math.PI; turn += STEP) {
                Vector2D x = new Vector2D(Math.cos(turn), Math.sin(turn));
                Vector2D y = new Vector2D(-x.getY(), x.getX());
                missing = Math.min(missing, Math.max(polygon.extent(x) - length, polygon.extent(y) - width));
                scale = Math.max(scale, Math.min(length / polygon.extent(x), width / polygon.extent(y)));
            }
            // a step of the turn moves no corner by more than STEP times the longest vector
            assertThat(RectangleFit.shortfall(polygon, length, width)).isBetween(missing - 2000 * STEP, missing + 1e-9);
            assertThat(RectangleFit.largestScale(polygon, length, width)).isBetween(scale - 1e-9, scale * 1.01);
        });
    }

    /** E. Friedman's and others' known answer: the side is sqrt 6 - sqrt 2; from memory. */
    @Test
    void largestEquilateralTriangleInAUnitSquare() {
        double side = Math.sqrt(6) - Math.sqrt(2);
        assertThat(RectangleFit.largestScale(ConvexPolygon.of(new Triangle(1, 1, 1)), 1, 1))
                .isCloseTo(side, within(1e-14));
    }

    /** Common practice, no source: a triangle whose every altitude exceeds the sheet's width is not cut in one piece. */
    @Test
    void aTriangleWiderThanTheSheetDoesNotFitHoweverLongTheSheetIs() {
        double foot = 304.8;
        ConvexPolygon five = ConvexPolygon.of(new Triangle(5 * foot, 5 * foot, 5 * foot));
        assertThat(five.narrowestWidth()).isCloseTo(52 * 25.4, within(0.25 * 25.4));
        assertThat(RectangleFit.shortfall(five, 100 * foot, 4 * foot))
                .isCloseTo(five.narrowestWidth() - 4 * foot, within(1e-9));
    }

    @Test
    void whatTouchesAllEdgesFits() {
        ConvexPolygon sheet = ConvexPolygon.of(0, 0, 2440, 0, 2440, 1220, 0, 1220);
        assertThat(RectangleFit.largestScale(sheet, 1220, 2440)).isCloseTo(1, within(1e-14));
        assertThat(RectangleFit.shortfall(sheet, 1221, 2441)).isCloseTo(-1, within(1e-9));
        assertThat(RectangleFit.shortfall(sheet, 1219, 2440)).isCloseTo(1, within(1e-9));
    }

    @Test
    void turnedBestAPolygonLacksWhatItLacksAtLeast() {
        Cases.each(60, (random, size) -> {
            ConvexPolygon polygon = polygon(random);
            double length = 500 + 2000 * random.nextDouble();
            double width = 300 + 1200 * random.nextDouble();
            double turn = RectangleFit.bestTurn(polygon, length, width);
            assertThat(turn).isBetween(0.0, Math.nextDown(Math.PI));
            assertThat(missing(polygon, turn, length, width))
                    .isCloseTo(RectangleFit.shortfall(polygon, length, width), within(1e-9));
        });
    }

    /** What a polygon lacks, turned counter-clockwise. */
    private static double missing(ConvexPolygon polygon, double turn, double length, double width) {
        double[] xy = new double[2 * polygon.size()];
        for (int c = 0; c < polygon.size(); c++) {
            xy[2 * c] = polygon.x(c) * Math.cos(turn) - polygon.y(c) * Math.sin(turn);
            xy[2 * c + 1] = polygon.x(c) * Math.sin(turn) + polygon.y(c) * Math.cos(turn);
        }
        ConvexPolygon turned = ConvexPolygon.of(xy);
        return Math.max(turned.extent(new Vector2D(1, 0)) - length, turned.extent(new Vector2D(0, 1)) - width);
    }

    /** Computed by hand here: a needle lies best along the diagonal of a square, turned by 45 degrees either way. */
    @Test
    void aNeedleLiesBestAlongADiagonal() {
        ConvexPolygon needle = ConvexPolygon.of(0, 0, 1300, 0, 1300, 1e-9, 0, 1e-9);
        assertThat(RectangleFit.bestTurn(needle, 1000, 1000) % (Math.PI / 2)).isCloseTo(Math.PI / 4, within(1e-9));
    }
}
