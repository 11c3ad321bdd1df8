package dev.calotte.svg.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.testing.Cases;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class LongArcsTest {

    /** An arc about (x, y) in equal parts. */
    private static List<Side> parts(double x, double y, double radius, double start, double sweep, int parts) {
        List<Side> sides = new ArrayList<>();
        for (int i = 0; i < parts; i++) {
            double from = start + i * sweep / parts;
            double to = start + (i + 1) * sweep / parts;
            sides.add(new Side(
                    x + radius * Math.cos(from),
                    y + radius * Math.sin(from),
                    x + radius * Math.cos(to),
                    y + radius * Math.sin(to),
                    radius,
                    sweep / parts));
        }
        return sides;
    }

    private static int quarters(double sweep) {
        return (int) Math.ceil(Math.abs(sweep) / (Math.PI / 2));
    }

    @Test
    void anArcInAsManyPartsAsItHasQuartersIsOneAgain() {
        Cases.each(80, (random, size) -> {
            double sweep = (0.05 + 6.1 * random.nextDouble()) * (random.nextBoolean() ? 1 : -1);
            double radius = 1 + 200 * random.nextDouble();
            double start = 6 * random.nextDouble();
            List<Side> sides = new ArrayList<>();
            sides.add(new Side(-9, -9, 0, 0, 0, 0));
            sides.addAll(parts(30, -20, radius, start, sweep, quarters(sweep)));
            sides.add(new Side(0, 0, 9, 9, 0, 0));
            List<Side> joined = LongArcs.of(sides);
            assertThat(joined).hasSize(3);
            Side arc = joined.get(1);
            assertThat(arc.sweepRad()).isCloseTo(sweep, within(1e-12));
            assertThat(arc.radiusMm()).isEqualTo(radius);
            assertThat(arc.fromX()).isEqualTo(sides.get(1).fromX());
            assertThat(arc.fromY()).isEqualTo(sides.get(1).fromY());
            assertThat(arc.toX()).isEqualTo(sides.get(sides.size() - 2).toX());
            assertThat(arc.toY()).isEqualTo(sides.get(sides.size() - 2).toY());
        });
    }

    /** Two parts of 0.7 radians are less than a quarter together: nobody divides that. */
    @Test
    void partsThatNobodyWouldHaveMadeStayApart() {
        assertThat(LongArcs.of(parts(0, 0, 50, 0, 1.4, 2))).hasSize(2);
        assertThat(LongArcs.of(parts(0, 0, 50, 0, 1.6, 2))).hasSize(1);
        assertThat(LongArcs.of(parts(0, 0, 50, 0, 3.0, 3))).hasSize(2);
        assertThat(LongArcs.of(parts(0, 0, 50, 0, 3.3, 3))).hasSize(1);
    }

    /** A full turn has no two ends, so three quarters are one and the last stays. */
    @Test
    void aFullTurnIsNeverOneArc() {
        List<Side> joined = LongArcs.of(parts(0, 0, 50, 1, 2 * Math.PI, 4));
        assertThat(joined).hasSize(2);
        assertThat(joined.get(0).sweepRad()).isCloseTo(1.5 * Math.PI, within(1e-12));
    }

    private static Side like(Side side, double radius, double sweep) {
        return new Side(side.fromX(), side.fromY(), side.toX(), side.toY(), radius, sweep);
    }

    @Test
    void whatIsNotTheSameCircleGoesOnAsAnother() {
        List<Side> two = parts(10, 20, 50, 0.4, 3, 2);
        Side first = two.get(0);
        Side second = two.get(1);
        assertThat(LongArcs.of(List.of(first, second))).hasSize(1);
        assertThat(LongArcs.of(List.of(first, like(second, 50.01, 1.5)))).hasSize(2);
        assertThat(LongArcs.of(List.of(first, like(second, 50, -1.5)))).hasSize(2);
        assertThat(LongArcs.of(List.of(first, like(second, 0, 0)))).hasSize(2);
        assertThat(LongArcs.of(List.of(first, parts(10.1, 20, 50, 1.9, 1.5, 1).get(0))))
                .hasSize(2);
        assertThat(LongArcs.of(List.of(first, parts(10, 20.1, 50, 1.9, 1.5, 1).get(0))))
                .hasSize(2);
        assertThat(LongArcs.of(List.of(first, parts(10, 20, 50, 1.9, 1.49, 1).get(0))))
                .hasSize(2);
    }

    @Test
    void partsLongerThanAQuarterAreNotOurs() {
        List<Side> two = parts(0, 0, 50, 0, 2 * 1.6, 2);
        assertThat(LongArcs.of(two)).isEqualTo(two);
    }
}
