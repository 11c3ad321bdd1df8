package dev.calotte.geometry;

import java.util.Arrays;

/**
 * Values put together where they surely belong to one group: in buckets half as wide as the largest gap inside a group.
 * There are far fewer of them than values that differ by rounding, so that what is sorted is short.
 */
final class Buckets {

    private static final long SPREAD = 0x9E37_79B9_7F4A_7C15L;

    /** The number of a bucket below this is exact enough; beyond, each value has a bucket of its own. */
    private static final double MOST = 1L << 50;

    private final double perUnit;
    private final int[] of;
    private long[] keys = new long[16];
    private double[] least = new double[16];
    private double[] most = new double[16];
    private int count;
    /** The place of a bucket, plus one, at the slot of its key or the next free one after it; at most half of it is full. */
    private int[] slots = new int[32];

    Buckets(double[] all, double tolerance) {
        this.perUnit = 2 / tolerance;
        this.of = new int[all.length];
        for (int i = 0; i < all.length; i++) {
            of[i] = place(all[i]);
        }
    }

    private int place(double value) {
        double scaled = value * perUnit;
        long key = Math.abs(scaled) < MOST ? (long) Math.floor(scaled) : Double.doubleToRawLongBits(value);
        int slot = slot(key);
        if (slots[slot] == 0) {
            slot = open(key, value, slot);
        }
        int place = slots[slot] - 1;
        least[place] = Math.min(least[place], value);
        most[place] = Math.max(most[place], value);
        return place;
    }

    private int open(long key, double value, int free) {
        int slot = free;
        if (count == keys.length) {
            grow();
            slot = slot(key);
        }
        keys[count] = key;
        least[count] = value;
        most[count] = value;
        slots[slot] = ++count;
        return slot;
    }

    private int slot(long key) {
        int slot = (int) ((key * SPREAD) >>> Long.numberOfLeadingZeros(slots.length - 1L));
        while (slots[slot] != 0 && keys[slots[slot] - 1] != key) {
            slot = (slot + 1) & (slots.length - 1);
        }
        return slot;
    }

    private void grow() {
        keys = Arrays.copyOf(keys, 2 * count);
        least = Arrays.copyOf(least, 2 * count);
        most = Arrays.copyOf(most, 2 * count);
        slots = new int[4 * count];
        for (int i = 0; i < count; i++) {
            slots[slot(keys[i])] = i + 1;
        }
    }

    /** The bucket of a value. */
    int of(int index) {
        return of[index];
    }

    /** The least value of each bucket. */
    double[] least() {
        return Arrays.copyOf(least, count);
    }

    /** The largest value of each bucket. */
    double[] most() {
        return Arrays.copyOf(most, count);
    }
}
