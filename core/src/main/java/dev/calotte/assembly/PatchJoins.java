package dev.calotte.assembly;

import dev.calotte.assembly.Patches.Join;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.TreeMap;
import java.util.function.IntFunction;

/** The order in which patches are joined: from the first, always the lowest number of those that touch what stands. */
final class PatchJoins {

    private final PanelNet net;
    private final double[] lengths;

    /** For each piece, by the number of the other, the sides that they share. */
    private final List<Map<Integer, List<Integer>>> shared = new ArrayList<>();

    private final List<Integer> order = new ArrayList<>();

    PatchJoins(PanelNet net, double[] lengths, int[] pieceOf) {
        this.net = net;
        this.lengths = lengths;
        for (int side = 0; side < 3 * pieceOf.length; side++) {
            int here = pieceOf[side / 3];
            while (shared.size() <= here) {
                shared.add(new TreeMap<>());
            }
            int there = net.across(side);
            if (there != PanelNet.NONE && pieceOf[there / 3] != here) {
                shared.get(here)
                        .computeIfAbsent(pieceOf[there / 3], p -> new ArrayList<>())
                        .add(side);
            }
        }
        sort();
    }

    private void sort() {
        boolean[] met = new boolean[shared.size()];
        PriorityQueue<Integer> touching = new PriorityQueue<>();
        for (int start = 0; start < met.length; start++) {
            meet(start, met, touching);
            while (!touching.isEmpty()) {
                int next = touching.remove();
                order.add(next);
                shared.get(next).keySet().forEach(other -> meet(other, met, touching));
            }
        }
    }

    private static void meet(int piece, boolean[] met, PriorityQueue<Integer> touching) {
        if (!met[piece]) {
            met[piece] = true;
            touching.add(piece);
        }
    }

    List<Integer> order() {
        return order;
    }

    /** Every seam between two pieces once, those of the piece that is added later. */
    List<Join> joins(IntFunction<String> mark) {
        List<Join> joins = new ArrayList<>();
        boolean[] stands = new boolean[shared.size()];
        for (int piece : order) {
            stands[piece] = true;
            shared.get(piece).forEach((other, sides) -> {
                if (stands[other]) {
                    chains(sides).forEach(mm -> joins.add(new Join(mark.apply(piece), mark.apply(other), mm)));
                }
            });
        }
        return joins;
    }

    /** The lengths of the connected chains that sides of a piece form. */
    private List<Double> chains(List<Integer> sides) {
        List<Double> chains = new ArrayList<>();
        List<Integer> left = new ArrayList<>(sides);
        while (!left.isEmpty()) {
            List<Integer> chain = new ArrayList<>(List.of(left.remove(0)));
            for (int i = 0; i < chain.size(); i++) {
                int side = chain.get(i);
                left.removeIf(other -> meet(side, other) && chain.add(other));
            }
            chains.add(
                    chain.stream().mapToDouble(side -> lengths[net.strut(side)]).sum());
        }
        return chains;
    }

    private boolean meet(int side, int other) {
        int end = net.hub(PanelNet.after(side));
        int otherEnd = net.hub(PanelNet.after(other));
        return net.hub(side) == otherEnd || end == net.hub(other) || net.hub(side) == net.hub(other) || end == otherEnd;
    }
}
