package dev.calotte.nest;

/**
 * Walks downhill on an overlap with limited memory (J. Nocedal, "Updating quasi-Newton matrices with limited storage",
 * 1980), each step shortened until it gains enough (L. Armijo, 1966).
 */
final class Descent {

    private static final int MEMORY = 6;
    private static final double GAIN = 1e-4;

    private final Overlap overlap;
    private final int size;
    private final double[][] moves = new double[MEMORY][];
    private final double[][] turns = new double[MEMORY][];
    private final double[] scales = new double[MEMORY];
    private int remembered;
    private double[] slope;
    private double[] nextSlope;
    private double[] next;
    private final double[] direction;
    private final double[] shares = new double[MEMORY];
    private int steps;

    Descent(Overlap overlap) {
        this.overlap = overlap;
        this.size = 3 * overlap.bodies();
        this.slope = new double[size];
        this.nextSlope = new double[size];
        this.next = new double[size];
        this.direction = new double[size];
        for (int m = 0; m < MEMORY; m++) {
            moves[m] = new double[size];
            turns[m] = new double[size];
        }
    }

    /** How often the overlap was asked for since this was made. */
    int steps() {
        return steps;
    }

    /** Changes the places until nothing lacks more than the tolerance, or no step gains; returns what is left. */
    double minimise(double[] places, int iterations, double tolerance) {
        remembered = 0;
        double value = overlap.value(places, slope);
        steps++;
        for (int iteration = 0; iteration < iterations && overlap.worst() > tolerance; iteration++) {
            aim();
            double after = walk(places, value);
            if (!(after < value)) {
                break;
            }
            boolean slow = value - after < 1e-7 * value;
            value = after;
            if (slow) {
                break;
            }
        }
        return overlap.worst() > tolerance ? value : 0;
    }

    private void aim() {
        for (int i = 0; i < size; i++) {
            direction[i] = -slope[i];
        }
        int newest = remembered - 1;
        int oldest = Math.max(0, remembered - MEMORY);
        for (int m = newest; m >= oldest; m--) {
            int k = m % MEMORY;
            shares[k] = scales[k] * dot(moves[k], direction);
            add(direction, -shares[k], turns[k]);
        }
        if (newest >= 0) {
            int k = newest % MEMORY;
            scale(direction, 1 / (scales[k] * dot(turns[k], turns[k])));
        } else {
            scale(direction, 0.25);
        }
        for (int m = oldest; m <= newest; m++) {
            int k = m % MEMORY;
            add(direction, shares[k] - scales[k] * dot(turns[k], direction), moves[k]);
        }
        if (dot(direction, slope) >= 0) {
            remembered = 0;
            for (int i = 0; i < size; i++) {
                direction[i] = -0.25 * slope[i];
            }
        }
    }

    private double walk(double[] places, double value) {
        double fall = dot(direction, slope);
        double step = 1;
        for (int trial = 0; trial < 14; trial++) {
            for (int i = 0; i < size; i++) {
                next[i] = places[i] + step * direction[i];
            }
            double after = overlap.value(next, nextSlope);
            steps++;
            if (after <= value + GAIN * step * fall) {
                remember(places);
                return after;
            }
            step *= 0.5;
        }
        overlap.value(places, slope);
        return value;
    }

    private void remember(double[] places) {
        int k = remembered % MEMORY;
        double bend = 0;
        for (int i = 0; i < size; i++) {
            moves[k][i] = next[i] - places[i];
            turns[k][i] = nextSlope[i] - slope[i];
            bend += moves[k][i] * turns[k][i];
        }
        if (bend > 1e-12) {
            scales[k] = 1 / bend;
            remembered++;
        }
        System.arraycopy(next, 0, places, 0, size);
        double[] old = slope;
        slope = nextSlope;
        nextSlope = old;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    private static void add(double[] a, double share, double[] b) {
        for (int i = 0; i < a.length; i++) {
            a[i] += share * b[i];
        }
    }

    private static void scale(double[] a, double factor) {
        for (int i = 0; i < a.length; i++) {
            a[i] *= factor;
        }
    }
}
