package dev.calotte.nest;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.testing.Cases;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

/** Places in a field of 500 by 300 and half-planes that keep parts apart, against the corners of where each may be. */
class SidePlanesTest {

    private static final Field FIELD = new Field(0, 500, 300, 0, false);
    private static final Vector2D RIGHT = new Vector2D(1, 0);
    private static final Vector2D UP = new Vector2D(0, 1);
    private static final double MM = 1e-6;

    private static ConvexPolygon polygon(Random random) {
        int corners = 3 + random.nextInt(3);
        double x = 100 * random.nextDouble() - 50;
        double y = 100 * random.nextDouble() - 50;
        double[] xy = new double[2 * corners];
        for (int c = 0; c < corners; c++) {
            double angle = 2 * Math.PI * (c + 0.8 * random.nextDouble()) / corners;
            xy[2 * c] = x + 90 * Math.cos(angle);
            xy[2 * c + 1] = y + 70 * Math.sin(angle);
        }
        return ConvexPolygon.of(xy);
    }

    private static List<ConvexPolygon> polygons(Random random, int count) {
        List<ConvexPolygon> polygons = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            polygons.add(polygon(random));
        }
        return polygons;
    }

    /** From the least to the greatest place of a part, by a share of each of its two ranges. */
    private static Vector2D place(ConvexPolygon part, double shareX, double shareY) {
        return new Vector2D(
                part.reach(RIGHT.negate()) + shareX * (500 - part.extent(RIGHT)),
                part.reach(UP.negate()) + shareY * (300 - part.extent(UP)));
    }

    private static double along(double[] plane, Vector2D from, Vector2D to) {
        return plane[0] * (to.getX() - from.getX()) + plane[1] * (to.getY() - from.getY());
    }

    @Test
    void aHalfPlaneIsAllowedIfTwoPartsReachItFromCornersOfTheirRanges() {
        Cases.each(40, (random, size) -> {
            List<ConvexPolygon> parts = polygons(random, 3);
            SidePlanes places = new SidePlanes(parts, FIELD);
            for (int n = 0; n < 20; n++) {
                double angle = 2 * Math.PI * random.nextDouble();
                double[] plane = {Math.cos(angle), Math.sin(angle), 700 * random.nextDouble() - 100};
                double most = Double.NEGATIVE_INFINITY;
                for (int corner = 0; corner < 16; corner++) {
                    Vector2D from = place(parts.get(2), corner & 1, corner >> 1 & 1);
                    Vector2D to = place(parts.get(1), corner >> 2 & 1, corner >> 3);
                    most = Math.max(most, along(plane, from, to));
                }
                assertThat(places.allows(2, 1, plane)).isEqualTo(most >= plane[2]);
            }
        });
    }

    /** Half-planes that hold for places chosen at will hold for those that are found. */
    @Test
    void placesAreFoundOnTheRightSidesOfAllHalfPlanes() {
        Cases.each(64, (random, size) -> {
            List<ConvexPolygon> parts = polygons(random, 4);
            List<Vector2D> chosen = parts.stream()
                    .map(part -> place(part, random.nextDouble(), random.nextDouble()))
                    .toList();
            SidePlanes places = new SidePlanes(parts, FIELD);
            List<double[]> planes = new ArrayList<>();
            for (int i = 0; i < 4; i++) {
                for (int j = i + 1; j < 4; j++) {
                    double angle = 2 * Math.PI * random.nextDouble();
                    double[] plane = {Math.cos(angle), Math.sin(angle), 0};
                    plane[2] = along(plane, chosen.get(i), chosen.get(j)) - random.nextInt(2);
                    places.push(i, j, plane);
                    planes.add(plane);
                }
            }
            double[] at = places.solve();
            assertThat(at).isNotNull();
            int next = 0;
            for (int i = 0; i < 4; i++) {
                Vector2D least = place(parts.get(i), 0, 0);
                Vector2D most = place(parts.get(i), 1, 1);
                assertThat(at[2 * i]).isBetween(least.getX() - MM, most.getX() + MM);
                assertThat(at[2 * i + 1]).isBetween(least.getY() - MM, most.getY() + MM);
                for (int j = i + 1; j < 4; j++) {
                    double[] plane = planes.get(next++);
                    Vector2D from = new Vector2D(at[2 * i], at[2 * i + 1]);
                    Vector2D to = new Vector2D(at[2 * j], at[2 * j + 1]);
                    assertThat(along(plane, from, to)).isGreaterThanOrEqualTo(plane[2] - MM);
                }
            }
        });
    }

    /** By hand: two squares of 200 are 300 apart at most along a field of 500; what is taken back forbids no more. */
    @Test
    void thereAreNoPlacesWhereHalfPlanesContradictEachOther() {
        ConvexPolygon square = ConvexPolygon.of(0, 0, 200, 0, 200, 200, 0, 200);
        SidePlanes places = new SidePlanes(List.of(square, square), FIELD);
        assertThat(places.hasRoom()).isTrue();
        places.push(0, 1, new double[] {1, 0, 299});
        assertThat(places.solve()).isNotNull();
        places.push(0, 1, new double[] {1, 0, 301});
        assertThat(places.solve()).isNull();
        places.pop();
        places.push(0, 1, new double[] {-1, 0, 1});
        assertThat(places.solve()).isNull();
        places.pop();
        assertThat(places.solve()).isNotNull();
        ConvexPolygon tooWide = ConvexPolygon.of(0, 0, 200, 0, 200, 301, 0, 301);
        assertThat(new SidePlanes(List.of(square, tooWide), FIELD).hasRoom()).isFalse();
    }

    /** By hand: what is too long or too wide by less than a millionth of a millimetre touches both edges. */
    @Test
    void aPartThatTouchesBothEdgesLiesMidway() {
        double over = 8e-7;
        ConvexPolygon touching = ConvexPolygon.of(0, 0, 500 + over, 0, 500 + over, 300 + over, 0, 300 + over);
        SidePlanes places = new SidePlanes(List.of(touching), FIELD);
        assertThat(places.hasRoom()).isTrue();
        assertThat(places.solve()[0]).isBetween(-over / 2 - 1e-12, -over / 2 + 1e-12);
        assertThat(places.solve()[1]).isBetween(-over / 2 - 1e-12, -over / 2 + 1e-12);
    }
}
