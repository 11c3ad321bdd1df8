package dev.calotte.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.document.Arc;
import dev.calotte.document.Circle;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.geometry.ConvexPolygon;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

class PatchTest {

    private static final GeometryFactory JTS = new GeometryFactory();

    private static Geometry hull(Patch patch) {
        return JTS.createMultiPointFromCoords(patch.corners().stream()
                        .map(corner -> new Coordinate(corner.getX(), corner.getY()))
                        .toArray(Coordinate[]::new))
                .convexHull();
    }

    private static Patch box(Random random) {
        double turn = random.nextDouble() * 6;
        return Patch.box(
                new Vector2D(random.nextDouble() * 30, random.nextDouble() * 30),
                new Vector2D(Math.cos(turn), Math.sin(turn)),
                random.nextDouble() * 12,
                random.nextDouble() * 4);
    }

    private static Patch other(Random random) {
        double x = random.nextDouble() * 30;
        double y = random.nextDouble() * 30;
        return switch (random.nextInt(3)) {
            case 0 -> box(random);
            case 1 ->
                Patch.of(new Circle(Operation.DRILL, x, y, random.nextDouble() * 3))
                        .get(0);
            default ->
                Patch.of(Polyline.open(Operation.ENGRAVE, x, y, x + 7 * random.nextDouble(), y + 3))
                        .get(0);
        };
    }

    /** Never clear where JTS finds them closer; and clear wherever they are half as far again apart (1/sin 45 degrees). */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void clearIsWhatIsFarEnoughAway(long seed) {
        Random random = new Random(seed);
        int clear = 0;
        for (int i = 0; i < 2000; i++) {
            Patch one = box(random);
            Patch two = other(random);
            double apart = hull(one).distance(hull(two)) - two.radius();
            assertThat(one.isClearOf(two, 2)).isEqualTo(two.isClearOf(one, 2));
            if (one.isClearOf(two, 2)) {
                assertThat(apart).isGreaterThan(2 - 1e-9);
                clear++;
            } else {
                assertThat(apart).isLessThan(2 * 1.5 + two.radius() / 2);
            }
        }
        assertThat(clear).isBetween(500, 1900);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void insideIsFarEnoughFromEverySide(long seed) {
        Random random = new Random(seed);
        ConvexPolygon outline = ConvexPolygon.of(0, 0, 30, 0, 36, 20, 10, 32);
        Geometry whole = JTS.createPolygon(new Coordinate[] {
            new Coordinate(0, 0),
            new Coordinate(30, 0),
            new Coordinate(36, 20),
            new Coordinate(10, 32),
            new Coordinate(0, 0)
        });
        int inside = 0;
        for (int i = 0; i < 2000; i++) {
            Patch patch = other(random);
            double apart = whole.contains(hull(patch)) ? whole.getBoundary().distance(hull(patch)) : -1;
            assertThat(patch.isInside(outline, 1)).isEqualTo(apart - patch.radius() >= 1);
            inside += patch.isInside(outline, 1) ? 1 : 0;
        }
        assertThat(inside).isBetween(100, 1900);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.2, 1, 3, -0.2, -1, -3})
    void anArcLiesInItsPatch(double bulge) {
        Polyline path =
                Polyline.closed(Operation.CUT_INNER, new double[] {1, 2, 9, 6, 20, 30}, new double[] {bulge, 0, 0});
        Arc arc = path.arc(0).orElseThrow();
        Patch patch = Patch.of(path).get(1);
        for (int i = 0; i <= 100; i++) {
            double angle = arc.startRad() + arc.sweepRad() * i / 100;
            assertThat(hull(patch).distance(JTS.createPoint(new Coordinate(arc.x(angle), arc.y(angle)))))
                    .isLessThan(patch.radius() + 1e-9);
        }
    }

    @Test
    void aPathIsTakenSideBySide() {
        assertThat(Patch.of(Polyline.open(Operation.SCORE, 0, 0, 5, 0, 5, 5))).hasSize(2);
        assertThat(Patch.of(Polyline.closed(Operation.CUT_INNER, 0, 0, 5, 5, 5, 0)))
                .hasSize(3);
    }

    @Test
    void aMovedPatchIsTheSameElsewhere() {
        Patch moved = Patch.box(new Vector2D(1, 2), new Vector2D(1, 0), 4, 3).moved(new Vector2D(10, 20));
        assertThat(moved.corners())
                .isEqualTo(List.of(
                        new Vector2D(11, 22), new Vector2D(15, 22), new Vector2D(15, 25), new Vector2D(11, 25)));
    }
}
