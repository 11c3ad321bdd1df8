package dev.calotte.parts;

import dev.calotte.geometry.Groups;
import java.util.ArrayList;
import java.util.List;

/**
 * The lengths of struts over the radius, gathered twice: those that are equal up to rounding, and of these, from the
 * shortest on, all that differ from the shortest of their group by no more than the workshop merges. The gathering never
 * runs on from neighbour to neighbour, so no group is wider than that.
 */
final class StrutLengths {

    private final Groups rounded;
    private final int[] mergedOf;
    private final List<Range> ranges = new ArrayList<>();

    /** From the shortest to the longest of a group. */
    private record Range(double least, double most) {

        double middle() {
            return least == most ? least : (least + most) / 2;
        }
    }

    /**
     * Gathers lengths.
     *
     * @param chords the lengths over the radius
     * @param within how far those of a group may lie apart, over the radius
     */
    StrutLengths(double[] chords, double within) {
        this.rounded = Groups.of(chords, StrutSorting.SAME);
        this.mergedOf = new int[rounded.count()];
        for (int g = 0; g < mergedOf.length; g++) {
            int last = ranges.size() - 1;
            if (last >= 0 && rounded.value(g) - ranges.get(last).least <= within) {
                ranges.set(last, new Range(ranges.get(last).least, rounded.value(g)));
            } else {
                ranges.add(new Range(rounded.value(g), rounded.value(g)));
            }
            mergedOf[g] = ranges.size() - 1;
        }
    }

    int count() {
        return ranges.size();
    }

    /** The number of the length of a strut, from 0. */
    int of(int strut) {
        return mergedOf[rounded.of(strut)];
    }

    double chord(int number) {
        return ranges.get(number).middle();
    }

    /** How far the longest and the shortest of a group are from its middle, over the radius. */
    double error(int number) {
        return (ranges.get(number).most - ranges.get(number).least) / 2;
    }
}
