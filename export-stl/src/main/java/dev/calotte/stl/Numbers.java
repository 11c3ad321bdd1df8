package dev.calotte.stl;

import java.util.Arrays;

/** Coordinates as they come; never more room than twice what has come. */
final class Numbers {

    private float[] all = new float[9 * 64];
    private int size;

    void add(float value) {
        if (size == all.length) {
            all = Arrays.copyOf(all, 2 * size);
        }
        all[size++] = value;
    }

    float at(int number) {
        return all[number];
    }

    float[] all() {
        return Arrays.copyOf(all, size);
    }

    /** A text without what is not printed, and without spaces around it. */
    static String printable(String text) {
        return text.replaceAll("[^ -~]", " ").strip();
    }
}
