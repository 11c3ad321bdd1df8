package dev.calotte.contour;

import java.util.function.IntToDoubleFunction;

/**
 * Level bands of one height over a drawing. Things that lie on each other share at least one, and of those that they share
 * one is the lowest.
 */
final class Bands {

    private static final int MOST = 1024;

    private final double low;
    private final double heightMm;
    private final int count;

    /** Bands twice as high as things are on the average, so that these are in few bands and bands hold few of them. */
    Bands(int size, IntToDoubleFunction lowest, IntToDoubleFunction highest) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        double sum = 0;
        for (int number = 0; number < size; number++) {
            double low = lowest.applyAsDouble(number);
            double high = highest.applyAsDouble(number);
            least = Math.min(least, low);
            most = Math.max(most, high);
            sum += high - low;
        }
        double wanted = size * (most - least) / (2 * sum);
        this.low = least;
        this.count = wanted >= 1 ? (int) Math.min(MOST, wanted) : 1;
        this.heightMm = (most - least) / count;
    }

    int count() {
        return count;
    }

    /** The band of a height; the first and the last have no end. */
    int of(double y) {
        return (int) Math.max(0, Math.min(count - 1, (y - low) / heightMm));
    }
}
