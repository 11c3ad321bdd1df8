package dev.calotte.nest;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * How much bodies are in each other's way, as a function of where they are: the sum of the squares of what each pair
 * lacks of the spacing and of how far each corner lies outside the field, with its gradient. Zero where all is well. The
 * field is a rectangle from the origin, or endless along x with everything repeated after a period.
 *
 * <p>What bodies that lie on each other lack is measured across the side that separates them best (separating axes of
 * convex polygons), what others lack between their nearest points. T. Imamichi, M. Yagiura and H. Nagamochi, "An iterated local search
 * algorithm based on nonlinear programming for the irregular strip packing problem", 2009, minimise such a sum.
 */
final class Overlap {

    /** Bodies that many periods apart come from a step that went astray; nothing there is worth anything. */
    private static final double FARTHEST = 1e6;

    private final Bodies bodies;
    private final double spacing;
    private final boolean[] turning;
    private final Standing standing;
    private final Parting parting;
    private double length;
    private double width;
    private boolean periodic;
    private final int[] order;
    private double[] slope;
    private double[] at;
    private double worst;

    Overlap(Bodies bodies, double spacing, boolean[] turning) {
        this.bodies = bodies;
        this.spacing = spacing;
        this.turning = turning.clone();
        this.order = IntStream.range(0, bodies.count).toArray();
        this.standing = new Standing(bodies);
        this.parting = new Parting(standing, spacing);
    }

    /** Sets the field; its length is the period if it is endless. */
    void within(double fieldLength, double fieldWidth, boolean repeats) {
        length = fieldLength;
        width = fieldWidth;
        periodic = repeats;
    }

    double length() {
        return length;
    }

    double width() {
        return width;
    }

    int bodies() {
        return bodies.count;
    }

    double worst() {
        return worst;
    }

    /** The sum at places (x, y, turn times radius for each body), and its slope. */
    double value(double[] places, double[] gradient) {
        at = places;
        slope = gradient;
        Arrays.fill(gradient, 0);
        worst = 0;
        double sum = 0;
        for (int i = 0; i < bodies.count; i++) {
            standing.place(i, places[3 * i], places[3 * i + 1], places[3 * i + 2]);
            sum += outside(i);
        }
        sum += periodic ? repeated() : swept();
        for (int i = 0; i < bodies.count; i++) {
            gradient[3 * i + 2] = turning[i] ? gradient[3 * i + 2] : 0;
        }
        return sum;
    }

    private double repeated() {
        double sum = 0;
        for (int i = 0; i < bodies.count; i++) {
            for (int j = i; j < bodies.count; j++) {
                sum += repeated(i, j);
            }
        }
        return sum;
    }

    /** All pairs near enough along x. */
    private double swept() {
        double reach = spacing;
        for (int i = 0; i < order.length; i++) {
            reach = Math.max(reach, 2 * bodies.radius[i] + spacing);
            int body = order[i];
            int place = i;
            while (place > 0 && at[3 * order[place - 1]] > at[3 * body]) {
                order[place] = order[place - 1];
                place--;
            }
            order[place] = body;
        }
        double sum = 0;
        for (int a = 0; a < order.length; a++) {
            double limit = at[3 * order[a]] + reach;
            for (int b = a + 1; b < order.length && at[3 * order[b]] < limit; b++) {
                sum += pair(order[a], order[b], 0);
            }
        }
        return sum;
    }

    /** Of a body and itself, only what comes after it. */
    private double repeated(int i, int j) {
        double reach = bodies.radius[i] + bodies.radius[j] + spacing;
        double apart = at[3 * j] - at[3 * i];
        if (!(Math.abs(apart) < FARTHEST * length)) {
            return Double.POSITIVE_INFINITY;
        }
        double sum = 0;
        double first = i == j ? 1 : Math.ceil((-reach - apart) / length);
        for (double shift = first; shift * length <= reach - apart; shift++) {
            sum += pair(i, j, shift * length);
        }
        return sum;
    }

    private double outside(int i) {
        double[] x = standing.x[i];
        double[] y = standing.y[i];
        double sum = 0;
        for (int c = 0; c < x.length; c++) {
            double overX = periodic ? 0 : beyond(x[c], length);
            double overY = beyond(y[c], width);
            if (overX != 0 || overY != 0) {
                sum += overX * overX + overY * overY;
                worst = Math.max(worst, Math.max(Math.abs(overX), Math.abs(overY)));
                push(i, 2 * overX, 2 * overY, x[c], y[c]);
            }
        }
        return sum;
    }

    private static double beyond(double value, double end) {
        return value < 0 ? value : Math.max(0, value - end);
    }

    /** Adds a slope of a body at a point of it. */
    private void push(int i, double fx, double fy, double px, double py) {
        slope[3 * i] += fx;
        slope[3 * i + 1] += fy;
        slope[3 * i + 2] += (fy * (px - at[3 * i]) - fx * (py - at[3 * i + 1])) / bodies.radius[i];
    }

    private double pair(int i, int j, double shift) {
        double dx = at[3 * j] + shift - at[3 * i];
        double dy = at[3 * j + 1] - at[3 * i + 1];
        double reach = bodies.radius[i] + bodies.radius[j] + spacing;
        if (dx * dx + dy * dy >= reach * reach) {
            return 0;
        }
        if (parting.apart(i, j, shift)) {
            return 0;
        }
        boolean own = parting.own();
        int owner = own ? i : j;
        int other = own ? j : i;
        double move = own ? shift : -shift;
        return parting.gap() > 0 ? near(owner, other, move) : over(owner, other, move);
    }

    /** What bodies lack that lie on each other, across the side of the owner that separates them best. */
    private double over(int owner, int other, double move) {
        double qx = standing.x[other][parting.corner()] + move;
        double qy = standing.y[other][parting.corner()];
        double ax = standing.normalX[owner][parting.side()];
        double ay = standing.normalY[owner][parting.side()];
        double lack = spacing - parting.gap();
        worst = Math.max(worst, lack);
        push(other, -2 * lack * ax, -2 * lack * ay, qx - move, qy);
        // the axis turns with its owner, so the owner is pushed at the other's corner
        push(owner, 2 * lack * ax, 2 * lack * ay, qx, qy);
        return lack * lack;
    }

    /** What bodies lack that do not touch: from the nearest points of both, of which one is a corner. */
    private double near(int i, int j, double shift) {
        double distance = parting.distance(i, j, shift);
        if (distance >= spacing) {
            return 0;
        }
        double lack = spacing - distance;
        worst = Math.max(worst, lack);
        double fx = 2 * lack / distance * (parting.toX() + shift - parting.fromX());
        double fy = 2 * lack / distance * (parting.toY() - parting.fromY());
        push(j, -fx, -fy, parting.toX(), parting.toY());
        push(i, fx, fy, parting.fromX(), parting.fromY());
        return lack * lack;
    }
}
