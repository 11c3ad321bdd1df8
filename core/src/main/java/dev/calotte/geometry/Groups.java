package dev.calotte.geometry;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Measured values gathered where they differ by rounding only: sorted, a new group begins where the gap to the value
 * before exceeds the tolerance. Groups are numbered from 0 by rising value.
 *
 * <pre>{@code
 * Groups lengths = Groups.of(new double[] {1200, 1310.5, 1200.0000001}, 1e-6);
 * int kinds = lengths.count();
 * }</pre>
 */
public final class Groups {

    private final int[] groupOf;
    private final double[] least;
    private final int[] sizes;

    private Groups(int[] groupOf, double[] least, int[] sizes) {
        this.groupOf = groupOf;
        this.least = least;
        this.sizes = sizes;
    }

    /**
     * Gathers values.
     *
     * @param values the values, finite, in any order
     * @param tolerance the largest gap inside a group, in the values' unit
     * @return the groups
     */
    public static Groups of(double[] values, double tolerance) {
        Buckets buckets = new Buckets(values, tolerance);
        double[] least = starts(buckets, tolerance);
        int[] groupOfBucket = Arrays.stream(buckets.least())
                .mapToInt(value -> Arrays.binarySearch(least, value))
                .map(found -> found >= 0 ? found : -found - 2)
                .toArray();
        int[] groupOf = new int[values.length];
        int[] sizes = new int[least.length];
        for (int i = 0; i < values.length; i++) {
            groupOf[i] = groupOfBucket[buckets.of(i)];
            sizes[groupOf[i]]++;
        }
        return new Groups(groupOf, least, sizes);
    }

    /** The least value of each group. Buckets do not mingle, so that their ends can be sorted apart from each other. */
    private static double[] starts(Buckets buckets, double tolerance) {
        double[] least = buckets.least();
        double[] most = buckets.most();
        Arrays.sort(least);
        Arrays.sort(most);
        return IntStream.range(0, least.length)
                .filter(i -> i == 0 || least[i] - most[i - 1] > tolerance)
                .mapToDouble(i -> least[i])
                .toArray();
    }

    /**
     * How many groups there are.
     *
     * @return the number of groups
     */
    public int count() {
        return least.length;
    }

    /**
     * The group of a value.
     *
     * @param index the place of the value among those given
     * @return the number of its group
     */
    public int of(int index) {
        return groupOf[index];
    }

    /**
     * The value that stands for a group.
     *
     * @param group the number of a group
     * @return its least value
     */
    public double value(int group) {
        return least[group];
    }

    /**
     * How many values a group has.
     *
     * @param group the number of a group
     * @return the number of values in it
     */
    public int size(int group) {
        return sizes[group];
    }
}
