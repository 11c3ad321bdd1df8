package dev.calotte.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.dome.Dome;
import dev.calotte.dome.Panel;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PaintOrderTest {

    private static final int SAMPLES = 400;

    static Stream<Named<Dome>> domes() {
        return DrawnDomes.all();
    }

    /**
     * Rays from the eye through random places: of the triangles that a ray meets (Möller and Trumbore, "Fast, Minimum
     * Storage Ray/Triangle Intersection", 1997), the nearest is painted last. Places near an edge are left out.
     */
    @ParameterizedTest
    @MethodSource("domes")
    void whatIsPaintedLastIsNearestTheEye(Dome dome) {
        Random random = new Random(5);
        for (double[] from : new double[][] {{0, 0}, {60.2, 0}, {20, 24}, {200, 0}, {75, -30}}) {
            Camera camera = Camera.from(from[0], from[1]);
            View view = new View(dome, camera);
            Vector3D eye = camera.right().crossProduct(camera.up());
            int met = 0;
            for (int i = 0; i < SAMPLES; i++) {
                double across = (2 * random.nextDouble() - 1) * dome.radiusMm();
                double up = (2 * random.nextDouble() - 1) * dome.radiusMm();
                Vector3D start = new Vector3D(across, camera.right(), up, camera.up(), 1e5, eye);
                met += check(dome, view, start, eye.negate()) ? 1 : 0;
            }
            assertThat(met).isGreaterThan(SAMPLES / 8);
        }
    }

    private static boolean check(Dome dome, View view, Vector3D start, Vector3D ray) {
        Panel last = null;
        Panel nearest = null;
        double least = Double.MAX_VALUE;
        for (Panel panel : view.panels()) {
            double at = hit(dome, panel, start, ray);
            if (at < Double.MAX_VALUE) {
                last = panel;
                if (at < least - 1e-6 * dome.radiusMm()) {
                    least = at;
                    nearest = panel;
                }
            }
        }
        assertThat(last).isEqualTo(nearest);
        return last != null;
    }

    private static double hit(Dome dome, Panel panel, Vector3D start, Vector3D ray) {
        List<Vector3D> at =
                panel.hubs().stream().map(h -> dome.hubs().get(h).position()).toList();
        Vector3D one = at.get(1).subtract(at.get(0));
        Vector3D two = at.get(2).subtract(at.get(0));
        Vector3D p = ray.crossProduct(two);
        double det = one.dotProduct(p);
        Vector3D t = start.subtract(at.get(0));
        double u = t.dotProduct(p) / det;
        Vector3D q = t.crossProduct(one);
        double v = ray.dotProduct(q) / det;
        boolean inside = u > 1e-6 && v > 1e-6 && u + v < 1 - 1e-6;
        return Math.abs(det) > 1e-9 && inside ? two.dotProduct(q) / det : Double.MAX_VALUE;
    }

    /** A far triangle whose middle is nearer than that of a long near one: middles alone would cover the wrong one. */
    @Test
    void middlesAloneDoNotDecide() {
        double[] tilted = {0, 0, 10, 10, 0, -20, 10, 1, -20};
        double[] behind = {0, 0, 5, 1, 0, 5, 0, 1, 5};
        assertThat(PaintOrder.of(List.of(tilted, behind))).containsExactly(1, 0);
        assertThat(PaintOrder.of(List.of(behind, tilted))).containsExactly(0, 1);
    }

    @Test
    void trianglesSeenEdgeOnAreLeftOut() {
        double[] edge = {0, 0, 1, 5, 0, 2, 9, 0, 7};
        double[] seen = {0, 0, 1, 5, 0, 2, 0, 3, 7};
        assertThat(PaintOrder.of(List.of(edge, seen))).containsExactly(1);
    }

    /** Three bars, each over the next, as a person folds the flaps of a box. */
    @Test
    void aCircleOfTrianglesIsPaintedAllTheSame() {
        double[] a = {0, 0, 0, 10, 0, 10, 10, 1, 10};
        double[] b = {10, -1, 0, 9, -1, 0, 5, 9, 10};
        double[] c = {5, 9, 0, 4, 9, 0, 0, -1, 10};
        assertThat(PaintOrder.of(List.of(a, b, c))).containsExactlyInAnyOrder(0, 1, 2);
    }
}
