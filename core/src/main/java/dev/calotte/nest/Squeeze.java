package dev.calotte.nest;

import java.util.List;

/**
 * Shortens what is taken from a roll, or a period that is repeated: all parts are drawn together a little and pushed
 * apart again, less each time that does not succeed.
 */
final class Squeeze {

    private static final double FINEST = 2e-6;

    private final Shaking shaking;
    private final double width;
    private final boolean periodic;
    private List<Spot> spots;
    private double length;

    Squeeze(Shaking shaking, double width, boolean periodic) {
        this.shaking = shaking;
        this.width = width;
        this.periodic = periodic;
    }

    /** Begins with parts that lie well in a length. */
    Squeeze from(List<Spot> good, double goodLength) {
        spots = good;
        length = goodLength;
        return this;
    }

    /** Shortens by this part of the length at first, until so many descents are spent; each try may change so much. */
    void run(double first, int patience, int budget) {
        int end = shaking.steps() + budget;
        double share = first;
        while (share > FINEST && shaking.steps() < end) {
            shaking.within(length, width, periodic);
            shaking.take(spots);
            double shorter = length * (1 - share);
            shaking.within(shorter, width, periodic);
            if (shaking.settle(Math.min(patience, end - shaking.steps()))) {
                spots = shaking.spots();
                length = shorter;
            } else {
                share /= 2;
            }
        }
    }

    List<Spot> spots() {
        return spots;
    }

    double length() {
        return length;
    }
}
