package dev.calotte.stl.body;

import java.util.Map;
import java.util.TreeMap;

/**
 * Cuts a closed surface along a plane square to an axis, and closes it there. The plane is moved a little until no
 * vertex lies in it.
 */
final class Slice {

    private static final double CLEAR = 1.0 / 128;

    private final Soup whole;
    private final Soup kept = new Soup();
    private final int axis;
    private final double at;
    private final int sign;
    private final Map<Long, Integer> cuts = new TreeMap<>();
    /** The border of the cut, the missing face on its left. */
    private final Map<Integer, Integer> border = new TreeMap<>();

    private Slice(Soup whole, int axis, double at, boolean upper) {
        this.whole = whole;
        this.axis = axis;
        this.at = at;
        this.sign = upper ? 1 : -1;
    }

    static Soup above(Soup whole, int axis, double at) {
        return new Slice(whole, axis, clear(whole, axis, at), true).cut();
    }

    static Soup below(Soup whole, int axis, double at) {
        return new Slice(whole, axis, clear(whole, axis, at), false).cut();
    }

    private static double clear(Soup whole, int axis, double at) {
        double plane = at;
        while (isTouched(whole, axis, plane)) {
            plane += 2 * CLEAR;
        }
        return plane;
    }

    private static boolean isTouched(Soup whole, int axis, double plane) {
        return whole.vertices().stream().anyMatch(vertex -> Math.abs(vertex[axis] - plane) < CLEAR);
    }

    private Soup cut() {
        whole.vertices().forEach(kept::vertex);
        whole.triangles().forEach(this::cut);
        new Cap(kept, axis, sign > 0).close(border);
        return kept;
    }

    private boolean isKept(int vertex) {
        return sign * (whole.vertices().get(vertex)[axis] - at) > 0;
    }

    private void cut(int... corners) {
        int inside = 0;
        for (int corner : corners) {
            inside += isKept(corner) ? 1 : 0;
        }
        if (inside == 3) {
            kept.triangle(corners);
        } else if (inside > 0) {
            // turned so that the corner that is alone on its side comes first
            int first = 0;
            while (isKept(corners[first]) != (inside == 1)) {
                first++;
            }
            cut(corners[first], corners[(first + 1) % 3], corners[(first + 2) % 3], inside == 1);
        }
    }

    private void cut(int alone, int next, int last, boolean keptAlone) {
        int towardsNext = onEdge(alone, next);
        int towardsLast = onEdge(alone, last);
        if (keptAlone) {
            kept.triangle(alone, towardsNext, towardsLast);
            border.put(towardsLast, towardsNext);
        } else {
            kept.triangle(towardsNext, next, last);
            kept.triangle(towardsNext, last, towardsLast);
            border.put(towardsNext, towardsLast);
        }
    }

    private int onEdge(int one, int other) {
        int low = Math.min(one, other);
        int high = Math.max(one, other);
        return cuts.computeIfAbsent((long) low << 32 | high, key -> {
            double[] from = whole.vertices().get(low);
            double[] to = whole.vertices().get(high);
            double share = (at - from[axis]) / (to[axis] - from[axis]);
            double[] place = new double[3];
            for (int i = 0; i < 3; i++) {
                place[i] = i == axis ? at : from[i] + share * (to[i] - from[i]);
            }
            return kept.vertex(place);
        });
    }
}
