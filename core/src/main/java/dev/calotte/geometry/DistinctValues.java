package dev.calotte.geometry;

import java.util.Arrays;

/**
 * Values without their repetitions, each known by its bits; in the order in which they first come. Of the angles and
 * lengths of a large dome only a few are distinct, so that few have to be sorted.
 */
final class DistinctValues {

    private static final long SPREAD = 0x9E37_79B9_7F4A_7C15L;

    private final int[] of;
    private double[] values = new double[16];
    private int count;
    /** The place of a value, plus one, at the slot of its bits or the next free one after it; at most half of it is full. */
    private int[] slots = new int[32];

    DistinctValues(double... all) {
        this.of = new int[all.length];
        for (int i = 0; i < all.length; i++) {
            of[i] = place(all[i]);
        }
    }

    private int place(double value) {
        int slot = slot(value);
        if (slots[slot] == 0) {
            if (count == values.length) {
                grow();
                slot = slot(value);
            }
            values[count] = value;
            slots[slot] = ++count;
        }
        return slots[slot] - 1;
    }

    private int slot(double value) {
        long bits = Double.doubleToRawLongBits(value);
        int slot = (int) ((bits * SPREAD) >>> Long.numberOfLeadingZeros(slots.length - 1L));
        while (slots[slot] != 0 && Double.doubleToRawLongBits(values[slots[slot] - 1]) != bits) {
            slot = (slot + 1) & (slots.length - 1);
        }
        return slot;
    }

    private void grow() {
        values = Arrays.copyOf(values, 2 * count);
        slots = new int[4 * count];
        for (int i = 0; i < count; i++) {
            slots[slot(values[i])] = i + 1;
        }
    }

    /** The place of a value among the distinct ones. */
    int of(int index) {
        return of[index];
    }

    /** The distinct values. */
    double[] values() {
        return Arrays.copyOf(values, count);
    }
}
