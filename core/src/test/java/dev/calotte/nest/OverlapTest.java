package dev.calotte.nest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.testing.Cases;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What bodies lack, pair by pair: distances of the JTS Topology Suite, or the depth across the best side of either. */
class OverlapTest {

    private static final double SPACING = 8;
    private static final int COUNT = 5;

    private final ConvexPolygon[] shapes = new ConvexPolygon[COUNT];
    private double length;
    private double width;
    private boolean endless;
    private double sum;
    private double worst;

    private static ConvexPolygon polygon(Random random) {
        int corners = 3 + random.nextInt(3);
        double[] xy = new double[2 * corners];
        for (int c = 0; c < corners; c++) {
            double angle = 2 * Math.PI * (c + 0.8 * random.nextDouble()) / corners;
            xy[2 * c] = 40 * Math.cos(angle) + 10;
            xy[2 * c + 1] = 30 * Math.sin(angle) - 5;
        }
        return ConvexPolygon.of(xy);
    }

    private static ConvexPolygon placed(ConvexPolygon shape, double x, double y, double arc) {
        double middleX = 0;
        double middleY = 0;
        for (int c = 0; c < shape.size(); c++) {
            middleX += shape.x(c) / shape.size();
            middleY += shape.y(c) / shape.size();
        }
        double radius = 0;
        for (int c = 0; c < shape.size(); c++) {
            radius = Math.max(radius, Math.hypot(shape.x(c) - middleX, shape.y(c) - middleY));
        }
        double[] xy = new double[2 * shape.size()];
        for (int c = 0; c < shape.size(); c++) {
            double dx = shape.x(c) - middleX;
            double dy = shape.y(c) - middleY;
            xy[2 * c] = x + dx * Math.cos(arc / radius) - dy * Math.sin(arc / radius);
            xy[2 * c + 1] = y + dx * Math.sin(arc / radius) + dy * Math.cos(arc / radius);
        }
        return ConvexPolygon.of(xy);
    }

    private void add(double lack) {
        if (lack > 0) {
            sum += lack * lack;
            worst = Math.max(worst, lack);
        }
    }

    private void pair(ConvexPolygon a, ConvexPolygon b) {
        double gap = NoFitTest.gap(a, b);
        add(SPACING - (gap > 0 ? KnownPlan.polygon(a).distance(KnownPlan.polygon(b)) : gap));
    }

    private void outside(ConvexPolygon body) {
        for (int c = 0; c < body.size(); c++) {
            add(endless ? 0 : -body.x(c));
            add(endless ? 0 : body.x(c) - length);
            add(-body.y(c));
            add(body.y(c) - width);
        }
    }

    /** Adds up all that lack of the spacing, and all corners that lie outside. */
    private void count(double[] at) {
        sum = 0;
        worst = 0;
        for (int i = 0; i < COUNT; i++) {
            ConvexPolygon body = placed(shapes[i], at[3 * i], at[3 * i + 1], at[3 * i + 2]);
            outside(body);
            for (int j = i; j < COUNT; j++) {
                for (int repeat = endless ? -6 : 0; repeat <= (endless ? 6 : 0); repeat++) {
                    if (j > i || repeat > 0) {
                        double x = at[3 * j] + repeat * length;
                        pair(body, placed(shapes[j], x, at[3 * j + 1], at[3 * j + 2]));
                    }
                }
            }
        }
    }

    @Test
    void allThatLacksIsCounted() {
        Cases.each(48, (random, size) -> {
            Bodies bodies = new Bodies(COUNT);
            for (int i = 0; i < COUNT; i++) {
                shapes[i] = polygon(random);
                bodies.set(i, shapes[i]);
            }
            boolean[] turning = new boolean[COUNT];
            Arrays.fill(turning, true);
            Overlap overlap = new Overlap(bodies, SPACING, turning);
            length = 90 + 100 * random.nextDouble();
            width = 140;
            for (int n = 0; n < 12; n++) {
                endless = n % 2 == 0;
                overlap.within(length, width, endless);
                double[] at = random.doubles(3 * COUNT, -20, 200).toArray();
                double value = overlap.value(at, new double[3 * COUNT]);
                count(at);
                assertThat(value).isCloseTo(sum, within(1e-6 * (1 + sum)));
                assertThat(overlap.worst()).isCloseTo(worst, within(1e-6));
            }
        });
    }

    @Test
    void whatKeepsItsGrainHasNoSlopeToTurn() {
        Bodies bodies = new Bodies(2);
        bodies.set(0, ConvexPolygon.of(0, 0, 100, 0, 30, 80));
        bodies.set(1, ConvexPolygon.of(0, 0, 90, 10, 40, 80));
        Overlap overlap = new Overlap(bodies, SPACING, new boolean[] {true, false});
        overlap.within(300, 200, false);
        double[] slope = new double[6];
        assertThat(overlap.value(new double[] {80, 90, 5, 110, 100, 5}, slope)).isPositive();
        assertThat(slope[2]).isNotZero();
        assertThat(slope[5]).isZero();
    }

    /** Places beyond all reach are worth nothing, and are found to be so at once. */
    @Test
    void bodiesThatWentAstrayAreInfinitelyInTheWay() {
        Bodies bodies = new Bodies(2);
        bodies.set(0, ConvexPolygon.of(0, 0, 100, 0, 30, 80));
        bodies.set(1, ConvexPolygon.of(0, 0, 100, 0, 30, 80));
        Overlap overlap = new Overlap(bodies, SPACING, new boolean[] {true, true});
        overlap.within(100, 200, true);
        assertThat(overlap.value(new double[] {0, 90, 0, 2e8, 90, 0}, new double[6]))
                .isInfinite();
        assertThat(overlap.value(new double[] {0, 90, 0, Double.NaN, 90, 0}, new double[6]))
                .isInfinite();
    }
}
