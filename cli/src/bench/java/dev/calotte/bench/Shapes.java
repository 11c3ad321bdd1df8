package dev.calotte.bench;

import dev.calotte.document.Drawing.Part;
import dev.calotte.document.Drawing;
import dev.calotte.document.Mesh;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import dev.calotte.sphere.Spacing;
import dev.calotte.sphere.SphereMesh;
import dev.calotte.sphere.Up;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/** What is written for a measurement; the scripts of the peers draw the same triangles. */
final class Shapes {

    private static final int ACROSS = 400;
    private static final double STEP_MM = 12;

    private Shapes() {}

    /** Closed triangles in rows, to be cut out. */
    static Drawing triangles(int count) {
        List<Shape> shapes = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double x = i % ACROSS * STEP_MM;
            double y = Math.floorDiv(i, ACROSS) * STEP_MM;
            shapes.add(Polyline.closed(Operation.CUT_OUTER, x, y, x + 10.123456, y, x + 5.061728, y + 8.767168));
        }
        return drawing(count, shapes);
    }

    /** One engraved triangle over and over, so that the drawing itself takes no memory to speak of. */
    static Drawing oneTriangle(int times) {
        Shape triangle = Polyline.closed(Operation.ENGRAVE, 0, 0, 10.123456, 0, 5.061728, 8.767168);
        return drawing(times, Collections.nCopies(times, triangle));
    }

    private static Drawing drawing(int count, List<Shape> shapes) {
        double height = STEP_MM * (Math.floorDiv(count, ACROSS) + 1);
        return new Drawing(
                "bench", "Triangles", ACROSS * STEP_MM, height, List.of(new Part("P1", "triangles", shapes)));
    }

    /** A closed ball of 4 n² facets, on the ground. */
    static Mesh ball(int n) {
        SphereMesh ball = SphereMesh.of(Solid.TETRAHEDRON, Breakdown.of(n), Spacing.CHORD);
        double[] xyz = Arrays.stream(ball.coordinates(Up.VERTEX))
                .map(unit -> 1000 * (unit + 1))
                .toArray();
        return new Mesh("bench", "A ball", xyz, ball.triangles());
    }
}
