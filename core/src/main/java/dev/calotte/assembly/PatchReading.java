package dev.calotte.assembly;

import dev.calotte.geometry.Groups;
import dev.calotte.parts.Parts;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Reads patches as lists of numbers that are equal for patches of one shape: the panels in the order in which they are
 * met from one side of one panel, each with the lengths of its sides and what lies across them. Read clockwise, a patch
 * gives what its mirror image gives counter-clockwise.
 */
final class PatchReading {

    private static final int OPEN = -1;
    private static final double SAME = 1e-9;

    private final PanelNet net;
    private final int[] patchOf;
    private final int[] lengthOf;

    PatchReading(Parts parts, PanelNet net, int[] patchOf) {
        this.net = net;
        this.patchOf = patchOf;
        double[] lengths = parts.dome().struts().stream()
                .mapToDouble(strut -> parts.kindOf(strut).lengthMm())
                .toArray();
        Groups groups = Groups.of(lengths, SAME * parts.dome().radiusMm());
        this.lengthOf = IntStream.range(0, lengths.length).map(groups::of).toArray();
    }

    /** A reading and the panels in its order. */
    record Reading(List<Integer> numbers, List<Integer> panels) implements Comparable<Reading> {

        @Override
        public int compareTo(Reading other) {
            for (int i = 0; i < Math.min(numbers.size(), other.numbers.size()); i++) {
                int order = Integer.compare(numbers.get(i), other.numbers.get(i));
                if (order != 0) {
                    return order;
                }
            }
            return Integer.compare(numbers.size(), other.numbers.size());
        }
    }

    /** The least reading of a patch in one sense. */
    Reading least(List<Integer> panels, boolean clockwise) {
        return starts(panels).stream()
                .map(side -> read(side, clockwise))
                .min(Comparator.naturalOrder())
                .orElseThrow();
    }

    /** The sides of the panels of the rarest shape, whatever the sense: only they can begin the least reading. */
    private List<Integer> starts(List<Integer> panels) {
        Map<List<Integer>, List<Integer>> alike = new LinkedHashMap<>();
        for (int panel : panels) {
            alike.computeIfAbsent(shape(panel), s -> new ArrayList<>()).add(panel);
        }
        Map.Entry<List<Integer>, List<Integer>> rarest = alike.entrySet().stream()
                .min(Comparator.comparingInt((Map.Entry<List<Integer>, List<Integer>> e) ->
                                e.getValue().size())
                        .thenComparing(e -> e.getKey().toString()))
                .orElseThrow();
        return rarest.getValue().stream()
                .flatMap(panel -> IntStream.range(3 * panel, 3 * panel + 3).boxed())
                .toList();
    }

    /** The lengths of a panel's sides, rising, and how many of them lie inside the patch. */
    private List<Integer> shape(int panel) {
        int[] lengths = IntStream.range(3 * panel, 3 * panel + 3)
                .map(side -> lengthOf[net.strut(side)])
                .sorted()
                .toArray();
        int inside = (int) IntStream.range(3 * panel, 3 * panel + 3)
                .filter(side -> inside(side) != PanelNet.NONE)
                .count();
        return List.of(lengths[0], lengths[1], lengths[2], inside);
    }

    /** The side across, if its panel belongs to the same patch. */
    private int inside(int side) {
        int there = net.across(side);
        return there != PanelNet.NONE && patchOf[there / 3] == patchOf[side / 3] ? there : PanelNet.NONE;
    }

    private Reading read(int start, boolean clockwise) {
        List<Integer> numbers = new ArrayList<>();
        List<Integer> panels = new ArrayList<>();
        Map<Integer, Integer> placeOf = new LinkedHashMap<>();
        Deque<Integer> waiting = new ArrayDeque<>(List.of(start));
        placeOf.put(start / 3, 0);
        while (!waiting.isEmpty()) {
            int side = waiting.remove();
            panels.add(side / 3);
            for (int k = 0; k < 3; k++) {
                numbers.add(lengthOf[net.strut(side)]);
                numbers.add(met(inside(side), placeOf, waiting));
                side = clockwise ? PanelNet.before(side) : PanelNet.after(side);
            }
        }
        return new Reading(numbers, panels);
    }

    /** The place of a panel among those met, which it gets now if it has none. */
    private static int met(int side, Map<Integer, Integer> placeOf, Deque<Integer> waiting) {
        if (side == PanelNet.NONE) {
            return OPEN;
        }
        Integer place = placeOf.get(side / 3);
        if (place == null) {
            place = placeOf.size();
            placeOf.put(side / 3, place);
            waiting.add(side);
        }
        return place;
    }
}
