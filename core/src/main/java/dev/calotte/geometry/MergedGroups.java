package dev.calotte.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * Measured values gathered twice: those that differ by rounding only, and of these, from the least on, all that differ
 * from the least of their group by no more than is to be merged. The gathering never runs on from neighbour to
 * neighbour, so no group is wider than that. Groups are numbered from 0 by rising value.
 */
public final class MergedGroups {

    private final Groups rounded;
    private final int[] mergedOf;
    private final List<Range> ranges = new ArrayList<>();

    /** From the least to the largest value of a group. */
    private record Range(double least, double most) {

        double middle() {
            return least == most ? least : (least + most) / 2;
        }
    }

    private MergedGroups(Groups rounded, double within) {
        this.rounded = rounded;
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

    /**
     * Gathers values.
     *
     * @param values the values, finite, in any order
     * @param tolerance the largest gap that is rounding, in the values' unit
     * @param within how far the values of a group may lie apart, 0 or more
     * @return the groups
     */
    public static MergedGroups of(double[] values, double tolerance, double within) {
        return new MergedGroups(Groups.of(values, tolerance), within);
    }

    /**
     * How many groups there are.
     *
     * @return the number of groups
     */
    public int count() {
        return ranges.size();
    }

    /**
     * The group of a value.
     *
     * @param index the place of the value among those given
     * @return the number of its group
     */
    public int of(int index) {
        return mergedOf[rounded.of(index)];
    }

    /**
     * The value that stands for a group.
     *
     * @param group the number of a group
     * @return the middle between its least value and its largest
     */
    public double value(int group) {
        return ranges.get(group).middle();
    }

    /**
     * What merging costs.
     *
     * @param group the number of a group
     * @return how far its least value and its largest are from the middle
     */
    public double error(int group) {
        return (ranges.get(group).most - ranges.get(group).least) / 2;
    }
}
