package dev.calotte.contour;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

class InwardTest {

    private static final GeometryFactory PLANE = new GeometryFactory();
    private static final double TOLERANCE = 0.2;

    /** A slab of 400 by 300 with a round bite in its top, of radius 50 about (200, 300), and a round end of radius 150. */
    private static Polyline slab() {
        double[] xy = {0, 0, 400, 0, 400, 300, 250, 300, 150, 300, 0, 300};
        return Polyline.closed(Operation.CUT_OUTER, xy, new double[] {0, 1, 0, -1, 0, 0});
    }

    private static Polyline backwards() {
        double[] xy = {0, 300, 150, 300, 250, 300, 400, 300, 400, 0, 0, 0};
        return Polyline.closed(Operation.CUT_OUTER, xy, new double[] {0, 1, 0, -1, 0, 0});
    }

    private static Polygon polygon(Polyline path) {
        Coordinate[] ring = new Coordinate[path.size() + 1];
        for (int c = 0; c <= path.size(); c++) {
            ring[c] = new Coordinate(path.x(c % path.size()), path.y(c % path.size()));
        }
        return PLANE.createPolygon(ring);
    }

    private static Point on(double x, double y, double radius, double angle) {
        return PLANE.createPoint(new Coordinate(x + radius * Math.cos(angle), y + radius * Math.sin(angle)));
    }

    @Test
    void nothingLiesOutsideTheArcsNorFarInsideThem() {
        Polygon flat = polygon(Inward.flattened(slab(), TOLERANCE));
        assertThat(flat.isValid()).isTrue();
        for (double t = 0.01; t < 1; t += 0.01) {
            double bite = Math.PI * (1 + t);
            assertThat(flat.contains(on(200, 300, 50 - 1e-9, bite))).isFalse();
            assertThat(flat.contains(on(200, 300, 50 + TOLERANCE + 1e-9, bite))).isTrue();
            double end = Math.PI * (t - 0.5);
            assertThat(flat.contains(on(400, 150, 150 + 1e-9, end))).isFalse();
            assertThat(flat.contains(on(400, 150, 150 - TOLERANCE - 1e-9, end))).isTrue();
        }
    }

    @Test
    void theDirectionDoesNotMatter() {
        Polygon one = polygon(Inward.flattened(slab(), TOLERANCE));
        Polygon other = polygon(Inward.flattened(backwards(), TOLERANCE));
        assertThat(one.symDifference(other).getArea()).isLessThan(1e-6);
    }

    @Test
    void straightSidesStayAsTheyAre() {
        Polyline flat = Inward.flattened(Polyline.closed(Operation.SHEET, 0, 0, 0, 5, 8, 5), TOLERANCE);
        assertThat(polygon(flat).getArea()).isEqualTo(20);
        assertThat(flat.size()).isEqualTo(3);
    }
}
