package dev.calotte.dome;

import dev.calotte.geometry.TriangleNet;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem.Code;
import java.util.Arrays;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * The part of the unit sphere that stays, its vertices and triangles renumbered in the order in which they are counted.
 * It is a sphere or a disc with one border.
 */
final class Cap {

    final Ball ball;
    /** The vertex of the ball that each hub is. */
    final int[] origin;

    final double[] xyz;
    final int[] hubRows;
    final int[] hubPlaces;
    final int[] panelRows;
    final int[] panelPlaces;
    final TriangleNet net;
    /** The hubs of the border, counter-clockwise seen from above, from the lowest number; empty for a sphere. */
    final int[] baseRing;

    Cap(Ball ball, IntPredicate stays) {
        int[] kept = kept(ball, stays);
        int[] used = used(kept, ball.mesh.vertexCount());
        RowOrder hubs = new RowOrder(gather(ball.rows, used), points(ball.xyz, used));
        this.ball = ball;
        this.origin = Arrays.stream(hubs.order).map(i -> used[i]).toArray();
        this.xyz = points(ball.xyz, origin);
        this.hubRows = gather(ball.rows, origin);
        this.hubPlaces = hubs.places;
        int[] renamed = renamed(kept);
        int[] rows = rowsOf(renamed);
        RowOrder panels = new RowOrder(rows, centres(renamed));
        this.panelRows = gather(rows, panels.order);
        this.panelPlaces = panels.places;
        this.net = join(arranged(renamed, panels.order));
        this.baseRing = ring();
    }

    /** The same part with its hubs in other places, none of which changes a hub's bearing; panels are counted anew. */
    Cap(Cap same, double[] xyz) {
        int[] triangles = same.triangles();
        this.ball = same.ball;
        this.origin = same.origin;
        this.xyz = xyz;
        this.hubRows = same.hubRows;
        this.hubPlaces = same.hubPlaces;
        int[] rows = rowsOf(triangles);
        RowOrder panels = new RowOrder(rows, centres(triangles));
        this.panelRows = gather(rows, panels.order);
        this.panelPlaces = panels.places;
        this.net = join(arranged(triangles, panels.order));
        this.baseRing = same.baseRing;
    }

    /** Three hubs for each panel, counter-clockwise. */
    int[] triangles() {
        return IntStream.range(0, 3 * net.triangleCount()).map(net::start).toArray();
    }

    private static int[] kept(Ball ball, IntPredicate stays) {
        int[] kept = new int[ball.triangles.length];
        int count = 0;
        for (int t = 0; t < ball.triangles.length / 3; t++) {
            if (stays.test(t)) {
                System.arraycopy(ball.triangles, 3 * t, kept, count, 3);
                count += 3;
            }
        }
        if (count == 0) {
            throw new CalotteException(
                    Code.IMPOSSIBLE,
                    "dome.keep",
                    "no panel lies wholly above that height.",
                    "Lower it, or enlarge the dome.");
        }
        return Arrays.copyOf(kept, count);
    }

    /** The vertices of triangles, rising. */
    private static int[] used(int[] kept, int vertexCount) {
        boolean[] seen = new boolean[vertexCount];
        for (int v : kept) {
            seen[v] = true;
        }
        return IntStream.range(0, vertexCount).filter(v -> seen[v]).toArray();
    }

    private static int[] gather(int[] values, int[] which) {
        int[] gathered = new int[which.length];
        Arrays.setAll(gathered, i -> values[which[i]]);
        return gathered;
    }

    private static double[] points(double[] xyz, int[] which) {
        double[] points = new double[3 * which.length];
        for (int i = 0; i < which.length; i++) {
            System.arraycopy(xyz, 3 * which[i], points, 3 * i, 3);
        }
        return points;
    }

    private int[] renamed(int[] kept) {
        int[] newName = new int[ball.mesh.vertexCount()];
        for (int i = 0; i < origin.length; i++) {
            newName[origin[i]] = i;
        }
        return Arrays.stream(kept).map(v -> newName[v]).toArray();
    }

    private int[] rowsOf(int[] triangles) {
        int[] rows = new int[triangles.length / 3];
        for (int t = 0; t < rows.length; t++) {
            int a = hubRows[triangles[3 * t]];
            int b = hubRows[triangles[3 * t + 1]];
            int c = hubRows[triangles[3 * t + 2]];
            rows[t] = 1 + Math.min(a, Math.min(b, c));
        }
        return rows;
    }

    private double[] centres(int[] triangles) {
        double[] centres = new double[triangles.length];
        for (int t = 0; t < triangles.length; t += 3) {
            for (int k = 0; k < 3; k++) {
                centres[t + k] =
                        (xyz[3 * triangles[t] + k] + xyz[3 * triangles[t + 1] + k] + xyz[3 * triangles[t + 2] + k]) / 3;
            }
        }
        return centres;
    }

    /** The triangles in order, each beginning with its lowest hub. */
    private static int[] arranged(int[] triangles, int[] order) {
        int[] arranged = new int[triangles.length];
        for (int i = 0; i < order.length; i++) {
            int t = 3 * order[i];
            int first = 0;
            for (int k = 1; k < 3; k++) {
                first = triangles[t + k] < triangles[t + first] ? k : first;
            }
            for (int k = 0; k < 3; k++) {
                arranged[3 * i + k] = triangles[t + (first + k) % 3];
            }
        }
        return arranged;
    }

    private TriangleNet join(int[] triangles) {
        try {
            return new TriangleNet(origin.length, triangles);
        } catch (IllegalArgumentException touching) {
            throw notOneDome("touches itself at a single hub");
        }
    }

    private int[] ring() {
        int[] ring = new int[origin.length];
        int open = 0;
        int first = -1;
        for (int v = 0; v < origin.length; v++) {
            if (net.isOpen(v)) {
                first = first < 0 ? v : first;
                open++;
            }
        }
        int count = 0;
        for (int v = first; open > 0 && (count == 0 || v != first); v = net.end(net.spoke(v))) {
            ring[count++] = v;
        }
        int euler = net.vertexCount() - net.edgeCount() + net.triangleCount();
        if (count != open || euler != (open > 0 ? 1 : 2)) {
            throw notOneDome("falls into pieces or has more than one border");
        }
        return Arrays.copyOf(ring, count);
    }

    private static CalotteException notOneDome(String how) {
        return new CalotteException(
                Code.IMPOSSIBLE,
                "dome.keep",
                "what stays above that height " + how + ".",
                "Choose another height, or a higher breakdown.");
    }
}
