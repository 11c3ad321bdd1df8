package dev.calotte.dome;

import dev.calotte.threads.Crew;
import java.util.Arrays;

/**
 * The order in which things are counted: by row, inside a row counter-clockwise from the start ray seen from above,
 * and of two at the same bearing the higher one first.
 */
final class RowOrder {

    /** Bearings, in radians, and heights, as parts of the radius, that differ by less are the same. */
    private static final double SAME = 1e-9;

    /** The things in order. */
    final int[] order;
    /** The place in its row, from 1, of each thing in order. */
    final int[] places;

    /**
     * Orders things.
     *
     * @param rows the row of each
     * @param points x, y and z of each, on or near the unit sphere
     */
    RowOrder(int[] rows, double[] points) {
        this.order = new int[rows.length];
        this.places = new int[rows.length];
        int[] ends = byRow(rows);
        Crew.forMany(rows.length).along(ends.length, (from, to) -> {
            for (int row = from; row < to; row++) {
                sortRow(row == 0 ? 0 : ends[row - 1], ends[row], points);
            }
        });
    }

    /** Puts the things of each row together, by number; where the rows end. */
    private int[] byRow(int... rows) {
        int[] next = new int[Arrays.stream(rows).max().orElse(-1) + 2];
        for (int row : rows) {
            next[row + 1]++;
        }
        Arrays.parallelPrefix(next, Integer::sum);
        for (int i = 0; i < rows.length; i++) {
            order[next[rows[i]]++] = i;
        }
        return Arrays.copyOf(next, next.length - 1);
    }

    /** Sorts a row by keys of a bearing, which takes 33 bits, and the place that the thing has so far. */
    private void sortRow(int start, int end, double[] points) {
        long[] keys = new long[end - start];
        int shift = Integer.SIZE - Integer.numberOfLeadingZeros(end - start);
        for (int i = start; i < end; i++) {
            int thing = 3 * order[i];
            long bearing = Math.round(bearingRad(points[thing], points[thing + 1]) / SAME);
            keys[i - start] = (bearing << shift) | (i - start);
        }
        Arrays.sort(keys);
        int[] before = Arrays.copyOfRange(order, start, end);
        for (int i = start; i < end; i++) {
            order[i] = before[(int) (keys[i - start] & ((1L << shift) - 1))];
            places[i] = i - start + 1;
            for (int j = i; j > start && (keys[j - start] >> shift) == (keys[j - start - 1] >> shift); j--) {
                swapIfHigher(j, points);
            }
        }
    }

    private void swapIfHigher(int place, double[] points) {
        int thing = order[place];
        if (higher(points, thing, order[place - 1])) {
            order[place] = order[place - 1];
            order[place - 1] = thing;
        }
    }

    private static boolean higher(double[] points, int one, int other) {
        return Math.round(points[3 * one + 2] / SAME) > Math.round(points[3 * other + 2] / SAME);
    }

    private static double bearingRad(double x, double y) {
        if (Math.abs(x) < SAME && Math.abs(y) < SAME) {
            return 0;
        }
        double bearing = StrictMath.atan2(y, x);
        if (bearing < 0) {
            bearing += 2 * Math.PI;
        }
        return bearing > 2 * Math.PI - SAME ? 0 : bearing;
    }
}
