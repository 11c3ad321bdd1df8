package dev.calotte.nest;

import java.util.List;

/**
 * Parts laid so that they can be repeated along a roll without end.
 *
 * @param counts of each kind
 * @param period the length after which they are repeated
 * @param spots where they lie, the middle of each within the first period, in the order of their middles
 */
record Block(List<Integer> counts, double period, List<Spot> spots) {
    Block {
        counts = List.copyOf(counts);
        spots = List.copyOf(spots);
    }

    int[] parts() {
        return counts.stream().mapToInt(Integer::intValue).toArray();
    }

    int size() {
        return spots.size();
    }
}
