package dev.calotte.stl.body;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * The convex hull of points, one point after the other. Points are moved by up to a ten-millionth of a millimetre while
 * it is sought, each by an amount of its own, so that no four lie in a plane and no case is doubtful; the hull's
 * triangles then hold for the points as they are, to the same ten-millionth.
 */
final class Hull {

    private static final double NUDGE = 1e-7;

    private final List<Vector3D> points = new ArrayList<>();
    private List<int[]> faces = new ArrayList<>();

    private Hull(List<Vector3D> exact) {
        for (int i = 0; i < exact.size(); i++) {
            Vector3D nudge = new Vector3D(share(3 * i), share(3 * i + 1), share(3 * i + 2));
            points.add(exact.get(i).add(NUDGE, nudge));
        }
    }

    /** Between -1 and 1, spread like chance and always the same. */
    private static double share(int number) {
        long mixed = (number + 1) * 0x9E3779B97F4A7C15L;
        mixed ^= mixed >>> 29;
        mixed *= 0xBF58476D1CE4E5B9L;
        return (mixed >> 11) * 0x1.0p-52;
    }

    /** The corners of each triangle, counter-clockwise seen from outside. */
    static List<int[]> of(List<Vector3D> points) {
        Hull hull = new Hull(points);
        hull.begin();
        for (int point = 4; point < points.size(); point++) {
            hull.add(point);
        }
        return hull.faces;
    }

    private void begin() {
        int[] first = sees(new int[] {0, 1, 2}, 3) ? new int[] {0, 2, 1} : new int[] {0, 1, 2};
        faces.add(first);
        for (int k = 0; k < 3; k++) {
            faces.add(new int[] {first[(k + 1) % 3], first[k], 3});
        }
    }

    private boolean sees(int[] face, int point) {
        Vector3D a = points.get(face[0]);
        Vector3D normal =
                points.get(face[1]).subtract(a).crossProduct(points.get(face[2]).subtract(a));
        return normal.dotProduct(points.get(point).subtract(a)) > 0;
    }

    private void add(int point) {
        List<int[]> kept = new ArrayList<>();
        Map<Integer, Integer> horizon = new TreeMap<>();
        List<int[]> seen = new ArrayList<>();
        faces.forEach(face -> (sees(face, point) ? seen : kept).add(face));
        List<long[]> edges = new ArrayList<>();
        Map<Long, Boolean> there = new TreeMap<>();
        for (int[] face : seen) {
            for (int k = 0; k < 3; k++) {
                there.put(edge(face[k], face[(k + 1) % 3]), true);
                edges.add(new long[] {face[k], face[(k + 1) % 3]});
            }
        }
        for (long[] edge : edges) {
            if (!there.containsKey(edge((int) edge[1], (int) edge[0]))) {
                horizon.put((int) edge[0], (int) edge[1]);
            }
        }
        horizon.forEach((from, to) -> kept.add(new int[] {from, to, point}));
        faces = kept;
    }

    private static long edge(int from, int to) {
        return (long) from << 32 | to;
    }
}
