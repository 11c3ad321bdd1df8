package dev.calotte.check;

import dev.calotte.check.RecordedPatches.Patch;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Whether a patch is its own mirror image: whether it can be laid on itself face down, side on side of the same length. */
final class PatchMirror {

    /** Every side of every panel may lie on the first one's, and all others are then compared. */
    static final int MOST_PANELS = 300;

    /** Lengths that differ by less than this part of the radius are of one kind. */
    private static final double ROUNDING = 2e-9;

    private final PatchNet net;
    private final Map<Integer, Integer> places = new TreeMap<>();
    private final double withinMm;

    private PatchMirror(Patch patch, PatchNet net, double radius) {
        this.net = net;
        this.withinMm = Printed.RECORD_MM + ROUNDING * radius;
        patch.panels().forEach(panel -> places.put(panel, places.size()));
    }

    static boolean isItsOwn(Patch patch, PatchNet net, double radius) {
        PatchMirror mirror = new PatchMirror(patch, net, radius);
        List<Integer> panels = patch.panels();
        for (int panel : panels) {
            for (int side = 0; side < 3; side++) {
                if (mirror.lies(new Pair(panels.get(0), 0, panel, side))) {
                    return true;
                }
            }
        }
        return false;
    }

    /** A side of a panel and the one that it is laid on. */
    private record Pair(int panel, int side, int on, int onSide) {}

    private boolean lies(Pair start) {
        Map<Integer, Integer> laid = new TreeMap<>();
        Deque<Pair> waiting = new ArrayDeque<>();
        laid.put(start.panel, start.on);
        waiting.add(start);
        while (!waiting.isEmpty()) {
            Pair pair = waiting.remove();
            for (int k = 0; k < 3; k++) {
                int side = (pair.side + k) % 3;
                int onSide = Math.floorMod(pair.onSide - k, 3);
                if (!fits(pair, side, onSide, laid, waiting)) {
                    return false;
                }
            }
        }
        return true;
    }

    private boolean fits(Pair pair, int side, int onSide, Map<Integer, Integer> laid, Deque<Pair> waiting) {
        if (Math.abs(net.kindLength(pair.panel, side) - net.kindLength(pair.on, onSide)) > withinMm) {
            return false;
        }
        int there = inside(pair.panel, side);
        int onThere = inside(pair.on, onSide);
        if (there == PatchCheck.NONE || onThere == PatchCheck.NONE) {
            return there == onThere;
        }
        Integer known = laid.putIfAbsent(there, onThere);
        if (known == null) {
            waiting.add(new Pair(there, back(there, pair.panel), onThere, back(onThere, pair.on)));
        }
        return known == null || known == onThere;
    }

    private int inside(int panel, int side) {
        int there = net.across(panel, side);
        return places.containsKey(there) ? there : PatchCheck.NONE;
    }

    /** The side of a panel across which the one lies that it was reached from. */
    private int back(int there, int from) {
        int side = 0;
        while (side < 2 && net.across(there, side) != from) {
            side++;
        }
        return side;
    }
}
