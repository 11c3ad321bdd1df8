package dev.calotte.nest;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.testing.Cases;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

/** Places that are forbidden, against the distances of the JTS Topology Suite and the projections on each side's normal. */
class NoFitTest {

    private static final double NEAR = 1e-6;

    private static ConvexPolygon polygon(Random random, double size) {
        int n = 3 + random.nextInt(4);
        double x = 40 * random.nextDouble() - 20;
        double y = 40 * random.nextDouble() - 20;
        double[] xy = new double[2 * n];
        for (int i = 0; i < n; i++) {
            double angle = 2 * Math.PI * (i + 0.8 * random.nextDouble()) / n;
            xy[2 * i] = x + size * Math.cos(angle);
            xy[2 * i + 1] = y + 0.7 * size * Math.sin(angle);
        }
        return ConvexPolygon.of(xy);
    }

    private static ConvexPolygon moved(ConvexPolygon part, double x, double y) {
        double[] xy = new double[2 * part.size()];
        for (int c = 0; c < part.size(); c++) {
            xy[2 * c] = part.x(c) + x;
            xy[2 * c + 1] = part.y(c) + y;
        }
        return ConvexPolygon.of(xy);
    }

    /** The widest gap between two parts across a side of either. */
    static double gap(ConvexPolygon a, ConvexPolygon b) {
        double most = Double.NEGATIVE_INFINITY;
        for (int side = 0; side < a.size(); side++) {
            most = Math.max(most, gap(a.outward(side), a, b));
        }
        for (int side = 0; side < b.size(); side++) {
            most = Math.max(most, gap(b.outward(side).negate(), a, b));
        }
        return most;
    }

    private static double gap(Vector2D axis, ConvexPolygon a, ConvexPolygon b) {
        return -b.reach(axis.negate()) - a.reach(axis);
    }

    private static double distance(ConvexPolygon a, ConvexPolygon b) {
        return KnownPlan.polygon(a).distance(KnownPlan.polygon(b));
    }

    private record Pair(ConvexPolygon fast, ConvexPolygon part, double spacing, NoFit region) {}

    private static Pair pair(Random random, int size) {
        ConvexPolygon fast = polygon(random, 60);
        ConvexPolygon part = polygon(random, 30 + random.nextInt(50));
        double spacing = 4 * (size % 3);
        return new Pair(fast, part, spacing, NoFit.of(fast, part, spacing));
    }

    @Test
    void aPlaceIsForbiddenIfNoSideKeepsThePartsApart() {
        Cases.each(80, (random, size) -> {
            Pair pair = pair(random, size);
            for (int n = 0; n < 60; n++) {
                double x = 320 * random.nextDouble() - 160;
                double y = 320 * random.nextDouble() - 160;
                ConvexPolygon laid = moved(pair.part(), x, y);
                double gap = gap(pair.fast(), laid);
                if (Math.abs(gap - pair.spacing()) > NEAR) {
                    assertThat(pair.region().forbids(x, y)).isEqualTo(gap < pair.spacing());
                }
                if (!pair.region().forbids(x, y)) {
                    assertThat(distance(pair.fast(), laid)).isGreaterThanOrEqualTo(pair.spacing() - NEAR);
                }
            }
        });
    }

    /** Corner after corner, and just inside and outside of each side between. */
    @Test
    void theOutlineOfARegionIsItsBorder() {
        Cases.each(40, (random, size) -> {
            Pair pair = pair(random, size);
            NoFit region = pair.region();
            for (int s = 0; s < region.size; s++) {
                int t = (s + 1) % region.size;
                double x = (region.x[s] + region.x[t]) / 2;
                double y = (region.y[s] + region.y[t]) / 2;
                assertThat(Math.abs(gap(pair.fast(), moved(pair.part(), x, y)) - pair.spacing()))
                        .isLessThan(NEAR);
                assertThat(region.x[s]).isBetween(region.left(), region.right());
                assertThat(region.y[s]).isBetween(region.low(), region.high());
            }
            assertThat(region.x).contains(region.left(), region.right());
            assertThat(region.y).contains(region.low(), region.high());
        });
    }

    @Test
    void whereTwoRegionsForbidTheSamePlaceTheyMeet() {
        Cases.each(60, (random, size) -> {
            ConvexPolygon part = polygon(random, 20);
            NoFit one = NoFit.of(polygon(random, 40), part, 2);
            double away = 150 * random.nextDouble();
            NoFit other = NoFit.of(moved(polygon(random, 40), away, away / 2), part, 2);
            for (int n = 0; n < 100; n++) {
                double x = one.left() + (one.right() - one.left()) * random.nextDouble();
                double y = one.low() + (one.high() - one.low()) * random.nextDouble();
                if (one.forbids(x, y) && other.forbids(x, y)) {
                    assertThat(one.meets(other)).isTrue();
                    assertThat(other.meets(one)).isTrue();
                }
            }
            NoFit far = NoFit.of(moved(polygon(random, 40), -400, 300), part, 2);
            assertThat(one.meets(far)).isFalse();
        });
    }

    @Test
    void whatIsFarEnoughLiesInAHalfPlaneAndWhatTouchesInNone() {
        Cases.each(60, (random, size) -> {
            Pair pair = pair(random, size);
            List<double[]> planes = pair.region().halfPlanes(pair.spacing());
            assertThat(planes).hasSize(pair.region().size * (pair.spacing() > 0 ? 2 : 1));
            for (int n = 0; n < 60; n++) {
                double x = 320 * random.nextDouble() - 160;
                double y = 320 * random.nextDouble() - 160;
                double distance = distance(pair.fast(), moved(pair.part(), x, y));
                boolean allowed = planes.stream().anyMatch(plane -> plane[0] * x + plane[1] * y >= plane[2] - 1e-7);
                if (distance >= pair.spacing() + NEAR && distance > NEAR) {
                    assertThat(allowed).isTrue();
                }
                if (distance == 0 && gap(pair.fast(), moved(pair.part(), x, y)) < -NEAR) {
                    assertThat(allowed).isFalse();
                }
            }
            assertThat(planes)
                    .allSatisfy(
                            plane -> assertThat(Math.hypot(plane[0], plane[1])).isBetween(1 - 1e-12, 1 + 1e-12));
        });
    }

    /** The chord of a round corner is as far from the corner as its turn says: none of its places is nearer. */
    @Test
    void aHalfPlaneIsNearerThanTheSpacingByNoMoreThanAChordIs() {
        Cases.each(60, (random, size) -> {
            ConvexPolygon fast = polygon(random, 60);
            ConvexPolygon part = polygon(random, 50);
            NoFit sharp = NoFit.of(fast, part, 0);
            List<double[]> planes = NoFit.of(fast, part, 8).halfPlanes(8);
            for (int p = 0; p < planes.size(); p++) {
                double[] plane = planes.get(p);
                double reach = Double.NEGATIVE_INFINITY;
                for (int c = 0; c < sharp.size; c++) {
                    reach = Math.max(reach, plane[0] * sharp.x[c] + plane[1] * sharp.y[c]);
                }
                boolean side = p < planes.size() / 2;
                assertThat(plane[2] - reach).isBetween(side ? 8 - NEAR : 0, 8 + NEAR);
            }
        });
    }

    @Test
    void aPartIsPushedAlongUntilItIsClearAndNoFurther() {
        Cases.each(80, (random, size) -> {
            Pair pair = pair(random, size);
            double y = 200 * random.nextDouble() - 100;
            double x = 20 * random.nextDouble();
            ConvexPolygon part = moved(pair.part(), x, y);
            double move = NoFit.of(pair.fast(), part, pair.spacing()).clearAlong();
            if (Double.isInfinite(move)) {
                for (double step = -300; step <= 300; step += 5) {
                    assertThat(gap(pair.fast(), moved(part, step, 0))).isGreaterThanOrEqualTo(pair.spacing() - NEAR);
                }
            } else {
                assertThat(Math.abs(gap(pair.fast(), moved(part, move, 0)) - pair.spacing()))
                        .isLessThan(NEAR);
                for (double step = 1; step < 300; step += 20) {
                    assertThat(gap(pair.fast(), moved(part, move + step, 0))).isGreaterThan(pair.spacing());
                }
                assertThat(gap(pair.fast(), moved(part, move - 1e-3, 0))).isLessThan(pair.spacing());
            }
        });
    }
}
