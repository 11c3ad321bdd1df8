package dev.calotte.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/** Areas and unions are those of JTS, which made no part of what is tested. */
class SurroundingsTest {

    private static final GeometryFactory PLANE = new GeometryFactory();

    private static Geometry geometry(Polygon polygon) {
        Coordinate[] ring = new Coordinate[polygon.size() + 1];
        for (int c = 0; c <= polygon.size(); c++) {
            ring[c] = new Coordinate(polygon.corner(c).getX(), polygon.corner(c).getY());
        }
        return PLANE.createPolygon(ring);
    }

    private static void check(Polygon outline) {
        Geometry inside = geometry(outline);
        List<Geometry> pieces = new ArrayList<>();
        Surroundings.of(outline).forEach(piece -> pieces.add(geometry(piece)));
        Geometry around = pieces.isEmpty() ? PLANE.createPolygon() : UnaryUnionOp.union(pieces);
        double box = inside.getEnvelope().getArea();
        assertThat(around.getArea() + inside.getArea()).isCloseTo(box, within(1e-9 * box));
        pieces.forEach(piece -> assertThat(piece.intersection(inside).getArea()).isLessThan(1e-9 * box));
    }

    /** A star about the origin, each side with a corner more on it if asked for. */
    private static Polygon star(SplittableRandom random, boolean flatCorners) {
        int corners = 4 + random.nextInt(30);
        double[] xy = new double[2 * corners];
        for (int c = 0; c < corners; c++) {
            double angle = 2 * Math.PI * (c + 0.8 * random.nextDouble()) / corners;
            double radius = 50 + 900 * random.nextDouble();
            xy[2 * c] = Math.rint(radius * Math.cos(angle));
            xy[2 * c + 1] = Math.rint(radius * Math.sin(angle));
        }
        return Polygon.of(flatCorners ? halved(xy) : xy);
    }

    private static double[] halved(double[] xy) {
        double[] more = new double[2 * xy.length];
        for (int c = 0; c < xy.length; c += 2) {
            int next = (c + 2) % xy.length;
            more[2 * c] = xy[c];
            more[2 * c + 1] = xy[c + 1];
            more[2 * c + 2] = (xy[c] + xy[next]) / 2;
            more[2 * c + 3] = (xy[c + 1] + xy[next + 1]) / 2;
        }
        return more;
    }

    @Test
    void piecesAndOutlineMakeTheRectangle() {
        check(Polygon.of(0, 0, 1200, 0, 1200, 400, 500, 400, 500, 900, 0, 900));
        check(Polygon.of(0, 0, 100, 0, 100, 50, 0, 50));
        check(Polygon.of(0, 0, 100, 0, 0, 100));
        for (int seed = 0; seed < 150; seed++) {
            Polygon star = star(new SplittableRandom(seed), seed % 2 == 0);
            if (SelfCrossing.of(star).isEmpty()) {
                check(star);
            }
        }
    }

    @Test
    void aRectangleHasNothingAroundIt() {
        assertThat(Surroundings.of(Polygon.of(0, 0, 100, 0, 100, 50, 0, 50))).isEmpty();
    }

    @Test
    void crossingsAreWhatJtsSaysTheyAre() {
        int simple = 0;
        for (int seed = 0; seed < 150; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            double[] xy = random.doubles(2L * (4 + random.nextInt(4)), 0, 100).toArray();
            try {
                Polygon any = Polygon.of(xy);
                assertThat(SelfCrossing.of(any).isEmpty())
                        .isEqualTo(geometry(any).isValid());
                simple += geometry(any).isValid() ? 1 : 0;
            } catch (IllegalArgumentException clockwise) {
                assertThat(clockwise).hasMessageContaining("counter-clockwise");
            }
        }
        assertThat(simple).isBetween(10, 140);
    }

    @Test
    void sidesThatTouchOrRunBackAreCrossings() {
        assertThat(SelfCrossing.of(Polygon.of(0, 0, 10, 0, 10, 10, 5, 0, 0, 10)))
                .isPresent();
        assertThat(SelfCrossing.of(Polygon.of(0, 0, 10, 0, 20, 0, 10, 0, 10, 10)))
                .isPresent();
    }
}
