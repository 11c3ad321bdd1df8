package dev.calotte.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PolylineTest {

    private static final double SAME = 1e-12;

    private static Polyline rounded(double... bulges) {
        return Polyline.closed(Operation.CUT_OUTER, new double[] {10, 0, 0, 10, -10, 0}, bulges);
    }

    @Test
    void sidesOfAPathWithoutBulgesAreStraight() {
        Polyline path = Polyline.closed(Operation.CUT_OUTER, 0, 0, 10, 0, 5, 8);
        for (int corner = 0; corner < 3; corner++) {
            assertThat(path.bulge(corner)).isZero();
            assertThat(path.arc(corner)).isEmpty();
        }
        assertThat(Polyline.open(Operation.SCORE, 0, 0, 1, 1).arc(0)).isEmpty();
    }

    @Test
    void everyCornerHasItsBulge() {
        assertThatThrownBy(() -> rounded(0, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> rounded(0, 0, 0, 0)).isInstanceOf(IllegalArgumentException.class);
        double[] bulges = {0.1, -0.2, 0};
        Polyline path = rounded(bulges);
        bulges[0] = 7;
        assertThat(path.bulge(0)).isEqualTo(0.1);
        assertThat(path.bulge(1)).isEqualTo(-0.2);
    }

    /** By hand: three quarters of the circle of radius 10 round the origin are two quarters and one half. */
    @Test
    void quartersAndHalvesOfACircleHaveItsCentre() {
        double quarter = StrictMath.tan(Math.PI / 8);
        Polyline path = rounded(quarter, quarter, 1);
        for (int side = 0; side < 3; side++) {
            Arc arc = path.arc(side).orElseThrow();
            assertThat(arc.xMm()).isCloseTo(0, within(SAME));
            assertThat(arc.yMm()).isCloseTo(0, within(SAME));
            assertThat(arc.radiusMm()).isCloseTo(10, within(SAME));
            assertThat(arc.sweepRad()).isCloseTo(side < 2 ? Math.PI / 2 : Math.PI, within(SAME));
        }
        assertThat(path.arc(1).orElseThrow().startRad()).isCloseTo(Math.PI / 2, within(SAME));
    }

    /** The definition of a bulge: chord = 2 r sin(sweep / 2), and both ends at the radius from the centre. */
    @ParameterizedTest
    @ValueSource(doubles = {0.01, 0.3, 0.999, 1, 1.2, 5, -0.01, -0.3, -1, -1.2, -5})
    void arcsEndAtTheirCorners(double bulge) {
        Polyline path =
                Polyline.closed(Operation.CUT_INNER, new double[] {3, 4, 11, -2, 40, 50}, new double[] {bulge, 0, 0});
        Arc arc = path.arc(0).orElseThrow();
        double end = arc.startRad() + arc.sweepRad();
        assertThat(arc.x(arc.startRad())).isCloseTo(3, within(1e-10));
        assertThat(arc.y(arc.startRad())).isCloseTo(4, within(1e-10));
        assertThat(arc.x(end)).isCloseTo(11, within(1e-10));
        assertThat(arc.y(end)).isCloseTo(-2, within(1e-10));
        assertThat(Math.tan(arc.sweepRad() / 4)).isCloseTo(bulge, within(1e-10));
        assertThat(Math.abs(2 * arc.radiusMm() * Math.sin(arc.sweepRad() / 2))).isCloseTo(10, within(1e-10));
    }

    @ParameterizedTest
    @CsvSource({
        "10, 100, 50, true",
        "10, 100, 5, false",
        "10, 100, 111, false",
        "10, 100, 410, true",
        "300, 100, 30, true",
        "300, 100, -30, true",
        "300, 100, 50, false",
        "10, -100, -50, true",
        "10, -100, 300, true",
        "10, -100, 50, false",
        "-170, -100, 179, true",
        "-170, -100, 0, false"
    })
    void arcsPassThroughWhatLiesInTheirSweep(double start, double sweep, double angle, boolean passes) {
        Arc arc = new Arc(0, 0, 1, Math.toRadians(start), Math.toRadians(sweep));
        assertThat(arc.passes(Math.toRadians(angle))).isEqualTo(passes);
    }
}
