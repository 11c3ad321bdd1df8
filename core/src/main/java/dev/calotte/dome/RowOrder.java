package dev.calotte.dome;

import java.util.Arrays;
import java.util.Comparator;

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
        long[] bearings = new long[rows.length];
        Integer[] sorted = new Integer[rows.length];
        for (int i = 0; i < rows.length; i++) {
            bearings[i] = Math.round(bearingRad(points[3 * i], points[3 * i + 1]) / SAME);
            sorted[i] = i;
        }
        Arrays.sort(
                sorted,
                Comparator.<Integer>comparingInt(i -> rows[i])
                        .thenComparingLong(i -> bearings[i])
                        .thenComparingLong(i -> -Math.round(points[3 * i + 2] / SAME))
                        .thenComparingInt(i -> i));
        this.order = new int[rows.length];
        this.places = new int[rows.length];
        for (int i = 0; i < rows.length; i++) {
            order[i] = sorted[i];
            boolean sameRow = i > 0 && rows[order[i]] == rows[order[i - 1]];
            places[i] = sameRow ? places[i - 1] + 1 : 1;
        }
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
