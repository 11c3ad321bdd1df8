package dev.calotte.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Which panels lie at which edge, by the vertices at its ends. */
final class Edges {

    /** More vertices than any dome has. */
    private static final long FAR = 1L << 31;

    private final Map<Long, List<Integer>> panelsAt = new TreeMap<>();
    private final Map<Long, Integer> directed = new TreeMap<>();

    /** Panels that run along an edge the same way as another. */
    final List<Integer> against = new ArrayList<>();

    Edges(List<RecordedDome.Panel> panels) {
        for (int panel = 0; panel < panels.size(); panel++) {
            List<Integer> corners = panels.get(panel).vertices();
            for (int k = 0; k < 3; k++) {
                add(panel, corners.get(k), corners.get((k + 1) % 3));
            }
        }
    }

    private void add(int panel, int from, int to) {
        panelsAt.computeIfAbsent(key(from, to), key -> new ArrayList<>()).add(panel);
        if (directed.put(FAR * from + to, panel) != null) {
            against.add(panel);
        }
    }

    static long key(int from, int to) {
        return FAR * Math.min(from, to) + Math.max(from, to);
    }

    static int from(long key) {
        return (int) (key / FAR);
    }

    static int to(long key) {
        return (int) (key % FAR);
    }

    List<Integer> panels(int from, int to) {
        return panelsAt.getOrDefault(key(from, to), List.of());
    }

    Map<Long, List<Integer>> all() {
        return panelsAt;
    }
}
