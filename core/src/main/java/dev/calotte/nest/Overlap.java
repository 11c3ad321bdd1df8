package dev.calotte.nest;

import java.util.Arrays;
import org.apache.commons.math3.util.FastMath;

/**
 * How much bodies are in each other's way, as a function of where they are: the sum of the squares of what each pair
 * lacks of the spacing and of how far each corner lies outside the field, with its gradient. Zero where all is well. The
 * field is a rectangle from the origin, or endless along x with everything repeated after a period.
 *
 * <p>What a pair lacks is measured across the side that separates them best (separating axes of convex polygons), and
 * from corner to corner where those are nearest. T. Imamichi, M. Yagiura and H. Nagamochi, "An iterated local search
 * algorithm based on nonlinear programming for the irregular strip packing problem", 2009, minimise such a sum.
 */
final class Overlap {

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
    private double[] slope;
    private double[] at;
    private double worst;

    private double gap;
    private boolean ownSide;
    private int side;
    private int corner;

    Overlap(Bodies bodies, double spacing, boolean[] turning) {
        this.bodies = bodies;
        this.spacing = spacing;
        this.turning = turning.clone();
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
        for (int i = 0; i < bodies.count; i++) {
            for (int j = periodic ? i : i + 1; j < bodies.count; j++) {
                sum += periodic ? repeated(i, j) : pair(i, j, 0);
            }
        }
        for (int i = 0; i < bodies.count; i++) {
            gradient[3 * i + 2] = turning[i] ? gradient[3 * i + 2] : 0;
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

    /** What the other body, moved, lacks from the owner of the side that keeps it farthest off. */
    private double lacking(int owner, int other, double move) {
        double qx = x[other][corner] + move;
        double qy = y[other][corner];
        double ax = nx[owner][side];
        double ay = ny[owner][side];
        int next = side + 1 == x[owner].length ? 0 : side + 1;
        double along = (qx - x[owner][side]) * -ay + (qy - y[owner][side]) * ax;
        double end = (x[owner][next] - x[owner][side]) * -ay + (y[owner][next] - y[owner][side]) * ax;
        if (gap > 0 && (along < 0 || along > end)) {
            int near = along < 0 ? side : next;
            return corners(owner, near, other, corner, move);
        }
        double lack = spacing - gap;
        worst = Math.max(worst, lack);
        double force = 2 * lack;
        push(other, -force * ax, -force * ay, qx - move, qy);
        // the axis turns with its owner, so the owner is pushed at the other's corner
        push(owner, force * ax, force * ay, qx, qy);
        return lack * lack;
    }

    /** What two corners lack, where no other points of the bodies are nearer to each other. */
    private double corners(int i, int c, int j, int d, double shift) {
        double dx = x[j][d] + shift - x[i][c];
        double dy = y[j][d] - y[i][c];
        double distance = Math.sqrt(dx * dx + dy * dy);
        if (distance >= spacing) {
            return 0;
        }
        double lack = spacing - distance;
        worst = Math.max(worst, lack);
        double force = 2 * lack / distance;
        push(j, -force * dx, -force * dy, x[j][d], y[j][d]);
        push(i, force * dx, force * dy, x[i][c], y[i][c]);
        return lack * lack;
    }
}
