package dev.calotte.nest;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.apache.commons.math3.util.FastMath;

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

    private static final double ROUNDING = 1e-9;

    private final Bodies bodies;
    private final double spacing;
    private final boolean[] turning;
    private final double[][] x;
    private final double[][] y;
    private final double[][] nx;
    private final double[][] ny;
    private double length;
    private double width;
    private boolean periodic;
    private final int[] order;
    private double[] slope;
    private double[] at;
    private double worst;

    private double gap;
    private boolean ownSide;
    private int side;
    private int corner;
    private double nearest;
    private double fromX;
    private double fromY;
    private double toX;
    private double toY;

    Overlap(Bodies bodies, double spacing, boolean[] turning) {
        this.bodies = bodies;
        this.spacing = spacing;
        this.turning = turning.clone();
        this.order = IntStream.range(0, bodies.count).toArray();
        this.x = like(bodies.cornerX);
        this.y = like(bodies.cornerX);
        this.nx = like(bodies.cornerX);
        this.ny = like(bodies.cornerX);
    }

    private static double[][] like(double[][] shape) {
        double[][] copy = new double[shape.length][];
        for (int i = 0; i < shape.length; i++) {
            copy[i] = new double[shape[i].length];
        }
        return copy;
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
            place(i);
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
        double sum = 0;
        double first = i == j ? 1 : Math.ceil((-reach - apart) / length);
        for (double shift = first; shift * length <= reach - apart; shift++) {
            sum += pair(i, j, shift * length);
        }
        return sum;
    }

    private void place(int i) {
        double turn = at[3 * i + 2] / bodies.radius[i];
        double cos = FastMath.cos(turn);
        double sin = FastMath.sin(turn);
        double[] cx = bodies.cornerX[i];
        double[] cy = bodies.cornerY[i];
        double[] mx = bodies.normalX[i];
        double[] my = bodies.normalY[i];
        for (int c = 0; c < cx.length; c++) {
            x[i][c] = at[3 * i] + cx[c] * cos - cy[c] * sin;
            y[i][c] = at[3 * i + 1] + cx[c] * sin + cy[c] * cos;
            nx[i][c] = mx[c] * cos - my[c] * sin;
            ny[i][c] = mx[c] * sin + my[c] * cos;
        }
    }

    private double outside(int i) {
        double sum = 0;
        for (int c = 0; c < x[i].length; c++) {
            double overX = periodic ? 0 : beyond(x[i][c], length);
            double overY = beyond(y[i][c], width);
            if (overX != 0 || overY != 0) {
                sum += overX * overX + overY * overY;
                worst = Math.max(worst, Math.max(Math.abs(overX), Math.abs(overY)));
                push(i, 2 * overX, 2 * overY, x[i][c], y[i][c]);
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
        gap = Double.NEGATIVE_INFINITY;
        ownSide = true;
        if (sides(i, j, shift)) {
            return 0;
        }
        double own = gap;
        if (sides(j, i, -shift)) {
            return 0;
        }
        ownSide = gap == own;
        return lacking(ownSide ? i : j, ownSide ? j : i, ownSide ? shift : -shift);
    }

    /** Looks for the side of i that keeps j farthest off; true if that is far enough. */
    private boolean sides(int i, int j, double shift) {
        double[] qx = x[j];
        double[] qy = y[j];
        for (int s = 0; s < x[i].length; s++) {
            double ax = nx[i][s];
            double ay = ny[i][s];
            double least = Double.POSITIVE_INFINITY;
            int nearest = 0;
            for (int c = 0; c < qx.length; c++) {
                double reach = ax * qx[c] + ay * qy[c];
                if (reach < least) {
                    least = reach;
                    nearest = c;
                }
            }
            least += ax * (shift - x[i][s]) - ay * y[i][s];
            if (least >= spacing) {
                return true;
            }
            if (least > gap) {
                gap = least;
                side = s;
                corner = nearest;
            }
        }
        return false;
    }

    /** What bodies lack that lie on each other, across the side of the owner that separates them best. */
    private double lacking(int owner, int other, double move) {
        if (gap > 0) {
            return apart(owner, other, move);
        }
        double qx = x[other][corner] + move;
        double qy = y[other][corner];
        double ax = nx[owner][side];
        double ay = ny[owner][side];
        double lack = spacing - gap;
        worst = Math.max(worst, lack);
        push(other, -2 * lack * ax, -2 * lack * ay, qx - move, qy);
        // the axis turns with its owner, so the owner is pushed at the other's corner
        push(owner, 2 * lack * ax, 2 * lack * ay, qx, qy);
        return lack * lack;
    }

    /** What bodies lack that do not touch: from the nearest points of both, of which one is a corner. */
    private double apart(int i, int j, double shift) {
        nearest = Double.POSITIVE_INFINITY;
        nearest(i, j, -shift, false);
        nearest(j, i, shift, true);
        double distance = Math.sqrt(nearest);
        if (distance >= spacing) {
            return 0;
        }
        double lack = spacing - distance;
        worst = Math.max(worst, lack);
        double fx = 2 * lack / distance * (toX + shift - fromX);
        double fy = 2 * lack / distance * (toY - fromY);
        push(j, -fx, -fy, toX, toY);
        push(i, fx, fy, fromX, fromY);
        return lack * lack;
    }

    /**
     * Looks for a side of j and a corner of i, moved, that are nearer than all before. No corner is nearer to a side than
     * to the line through it, which is told sooner.
     */
    private void nearest(int i, int j, double shift, boolean swapped) {
        double[] px = x[i];
        double[] py = y[i];
        double[] sx = x[j];
        double[] sy = y[j];
        for (int s = 0; s < sx.length; s++) {
            int t = s + 1 == sx.length ? 0 : s + 1;
            double ux = sx[t] - sx[s];
            double uy = sy[t] - sy[s];
            double ax = nx[j][s];
            double ay = ny[j][s];
            double square = ux * ux + uy * uy;
            for (int c = 0; c < px.length; c++) {
                double vx = px[c] + shift - sx[s];
                double vy = py[c] - sy[s];
                double off = ax * vx + ay * vy;
                if (off * off > nearest * (1 + ROUNDING)) {
                    continue;
                }
                double share = (ux * vx + uy * vy) / square;
                share = share < 0 ? 0 : share > 1 ? 1 : share;
                double dx = vx - share * ux;
                double dy = vy - share * uy;
                if (dx * dx + dy * dy < nearest) {
                    nearest = dx * dx + dy * dy;
                    double onX = sx[s] + share * ux;
                    double onY = sy[s] + share * uy;
                    fromX = swapped ? onX : px[c];
                    fromY = swapped ? onY : py[c];
                    toX = swapped ? px[c] : onX;
                    toY = swapped ? py[c] : onY;
                }
            }
        }
    }
}
