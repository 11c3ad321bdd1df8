package dev.calotte.contour;

import java.util.Arrays;

/**
 * Numbers of things in the order of their left ends; which of two that begin within a float's rounding comes first is all
 * one.
 */
final class LeftEnds {

    /** More than by how much a float is rounded, as a part of it. */
    static final double ROUNDING = 1e-6;

    private static final long INDEX = 0xffff_ffffL;

    private final long[] keys;
    private int count;

    LeftEnds(int most) {
        this.keys = new long[most];
    }

    void add(int number, double left) {
        int bits = Float.floatToIntBits((float) left);
        int sortable = bits ^ ((bits >> 31) & Integer.MAX_VALUE);
        keys[count++] = ((long) sortable << 32) | number;
    }

    void sort() {
        Arrays.sort(keys, 0, count);
    }

    int size() {
        return count;
    }

    int number(int place) {
        return (int) (keys[place] & INDEX);
    }
}
