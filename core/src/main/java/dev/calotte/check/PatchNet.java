package dev.calotte.check;

import dev.calotte.check.RecordedDome.Strut;
import dev.calotte.check.RecordedDome.StrutKind;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What lies across the sides of panels, in which patch it is, and how long the sides are. */
final class PatchNet {

    final int[] patchOf;

    private final RecordedDome dome;
    private final Edges edges;
    private final Map<Long, Double> exactMm = new TreeMap<>();

    PatchNet(RecordedDome dome, int[] patchOf) {
        this.dome = dome;
        this.patchOf = patchOf;
        this.edges = new Edges(dome.panels());
        Map<String, Double> lengths = new TreeMap<>();
        for (StrutKind kind : dome.strutKinds()) {
            lengths.put(kind.mark(), kind.length());
        }
        for (Strut strut : dome.struts()) {
            Double length = lengths.get(strut.kind());
            if (length != null) {
                exactMm.put(Edges.key(strut.from(), strut.to()), length);
            }
        }
    }

    /** The panel across a side; none at a border. */
    int across(int panel, int side) {
        List<Integer> there = edges.panels(from(panel, side), to(panel, side));
        return there.size() != 2 ? PatchCheck.NONE : there.get(0) == panel ? there.get(1) : there.get(0);
    }

    int from(int panel, int side) {
        return dome.panels().get(panel).vertices().get(side);
    }

    int to(int panel, int side) {
        return dome.panels().get(panel).vertices().get((side + 1) % 3);
    }

    /** Between its hubs. */
    double length(int panel, int side) {
        return dome.vertex(from(panel, side)).distance(dome.vertex(to(panel, side)));
    }

    /** As its kind of struts has it, which is what tells shapes apart where kinds are merged. */
    double kindLength(int panel, int side) {
        return exactMm.getOrDefault(Edges.key(from(panel, side), to(panel, side)), length(panel, side));
    }

    /** How far the sum of so many sides may be from what is recorded. */
    double within(int sides) {
        return Math.max(1, sides) * (Printed.RECORD_MM + dome.mergeError());
    }
}
