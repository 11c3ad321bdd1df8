package dev.calotte.testing;

import java.util.Random;

/**
 * Random cases that are the same in every run. They grow, so that the first to fail is the smallest; its seed is in the
 * message, and {@code -Dcalotte.seed=...} starts from another one.
 */
public final class Cases {

    private static final long SEED = Long.getLong("calotte.seed", 20_260_101L);

    /** What must hold for a case. */
    public interface Law {
        /** Checks it; the size runs from 1 to the number of cases. */
        void check(Random random, int size);
    }

    private Cases() {}

    /** Checks a law on so many cases; on every eighth where mutation tests repeat it thousands of times. */
    public static void each(int count, Law law) {
        int step = Boolean.getBoolean("calotte.few") ? 8 : 1;
        for (int size = 1; size <= count; size += step) {
            try {
                law.check(new Random(SEED + size), size);
            } catch (AssertionError | RuntimeException failure) {
                throw new AssertionError("case " + size + " from seed " + SEED + ": " + failure.getMessage(), failure);
            }
        }
    }
}
