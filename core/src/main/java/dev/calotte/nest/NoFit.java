package dev.calotte.nest;

import dev.calotte.geometry.ConvexPolygon;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.util.FastMath;

/**
 * Where the origin of a convex part may not be, so that it stays clear of one that lies fast: the Minkowski sum of the
 * one with the other turned about, every side moved out by the spacing (R. C. Art, "An approach to the two dimensional
 * irregular cutting stock problem", 1966). Corners are mitred, which keeps a little more than the spacing there.
 */
final class NoFit {

    private static final double ROUNDING = 1e-9;
    private static final double ROUNDING_MM = 1e-7;

    final int size;
    private final double[] nx;
    private final double[] ny;
    private final double[] reach;
    private final double[] angle;
    final double[] x;
    final double[] y;
    private double left = Double.POSITIVE_INFINITY;
    private double right = Double.NEGATIVE_INFINITY;
    private double low = Double.POSITIVE_INFINITY;
    private double high = Double.NEGATIVE_INFINITY;
    private double middleX;
    private double middleY;
    private double radius;

    private NoFit(int sides) {
        this.size = sides;
        this.nx = new double[sides];
        this.ny = new double[sides];
        this.reach = new double[sides];
        this.angle = new double[sides];
        this.x = new double[sides];
        this.y = new double[sides];
    }

    static NoFit of(ConvexPolygon fast, ConvexPolygon part, double spacing) {
        NoFit sum = new NoFit(fast.size() + part.size());
        int sides = 0;
        for (int s = 0; s < fast.size(); s++) {
            sides = sum.insert(sides, fast.outward(s).getX(), fast.outward(s).getY());
        }
        for (int s = 0; s < part.size(); s++) {
            sides = sum.insert(sides, -part.outward(s).getX(), -part.outward(s).getY());
        }
        NoFit trimmed = sides == sum.size ? sum : sum.first(sides);
        trimmed.finish(fast, part, spacing);
        return trimmed;
    }

    private NoFit first(int sides) {
        NoFit fewer = new NoFit(sides);
        System.arraycopy(nx, 0, fewer.nx, 0, sides);
        System.arraycopy(ny, 0, fewer.ny, 0, sides);
        return fewer;
    }

    /** Keeps the normals sorted by angle, each direction once. */
    private int insert(int sides, double ax, double ay) {
        double around = FastMath.atan2(ay, ax);
        // half a turn either way is the same direction
        double a = around > FastMath.PI - ROUNDING ? around - 2 * FastMath.PI : around;
        int place = sides;
        while (place > 0 && angle[place - 1] > a - ROUNDING) {
            place--;
        }
        if (place < sides && angle[place] < a + ROUNDING) {
            return sides;
        }
        for (int i = sides; i > place; i--) {
            angle[i] = angle[i - 1];
            nx[i] = nx[i - 1];
            ny[i] = ny[i - 1];
        }
        angle[place] = a;
        nx[place] = ax;
        ny[place] = ay;
        return sides + 1;
    }

    private void finish(ConvexPolygon fast, ConvexPolygon part, double spacing) {
        for (int s = 0; s < size; s++) {
            double least = Double.POSITIVE_INFINITY;
            for (int c = 0; c < part.size(); c++) {
                least = Math.min(least, nx[s] * part.x(c) + ny[s] * part.y(c));
            }
            double most = Double.NEGATIVE_INFINITY;
            for (int c = 0; c < fast.size(); c++) {
                most = Math.max(most, nx[s] * fast.x(c) + ny[s] * fast.y(c));
            }
            reach[s] = most - least + spacing;
        }
        for (int s = 0; s < size; s++) {
            int t = (s + 1) % size;
            double cross = nx[s] * ny[t] - ny[s] * nx[t];
            x[s] = (reach[s] * ny[t] - reach[t] * ny[s]) / cross;
            y[s] = (nx[s] * reach[t] - nx[t] * reach[s]) / cross;
            left = Math.min(left, x[s]);
            right = Math.max(right, x[s]);
            low = Math.min(low, y[s]);
            high = Math.max(high, y[s]);
            middleX += x[s] / size;
            middleY += y[s] / size;
        }
        for (int s = 0; s < size; s++) {
            double dx = x[s] - middleX;
            double dy = y[s] - middleY;
            radius = Math.max(radius, Math.sqrt(dx * dx + dy * dy));
        }
    }

    double left() {
        return left;
    }

    double right() {
        return right;
    }

    double low() {
        return low;
    }

    double high() {
        return high;
    }

    /** Whether a part at this place would lie too near. */
    boolean forbids(double px, double py) {
        double dx = px - middleX;
        double dy = py - middleY;
        if (dx * dx + dy * dy > radius * radius) {
            return false;
        }
        for (int s = 0; s < size; s++) {
            if (nx[s] * px + ny[s] * py >= reach[s] - ROUNDING_MM) {
                return false;
            }
        }
        return true;
    }

    /**
     * Half-planes, as (x and y of a direction, distance), of which the origin of the part lies in one if it is clear of
     * the other by the spacing. Round corners are cut by their chords, so some places in these half-planes are nearer,
     * but none outside them is far enough.
     */
    List<double[]> halfPlanes(double spacing) {
        List<double[]> planes = new ArrayList<>();
        for (int s = 0; s < size; s++) {
            planes.add(new double[] {nx[s], ny[s], reach[s]});
        }
        for (int s = 0; spacing > 0 && s < size; s++) {
            int t = (s + 1) % size;
            double ux = nx[s] + nx[t];
            double uy = ny[s] + ny[t];
            double twice = Math.sqrt(ux * ux + uy * uy);
            // from the mitred corner back to the sharp one, then out to the chord
            double mitre = (ux * x[s] + uy * y[s]) / twice - spacing / (twice / 2);
            planes.add(new double[] {ux / twice, uy / twice, mitre + spacing * twice / 2});
        }
        return planes;
    }

    /** How far along x the part must be moved at least, so that it is clear of the other wherever it is moved further. */
    double clearAlong() {
        double low = Double.NEGATIVE_INFINITY;
        double high = Double.POSITIVE_INFINITY;
        for (int s = 0; s < size; s++) {
            if (Math.abs(nx[s]) < ROUNDING) {
                high = reach[s] > 0 ? high : Double.NEGATIVE_INFINITY;
            } else if (nx[s] > 0) {
                high = Math.min(high, reach[s] / nx[s]);
            } else {
                low = Math.max(low, reach[s] / nx[s]);
            }
        }
        return high > low ? high : Double.NEGATIVE_INFINITY;
    }

    boolean meets(NoFit other) {
        double dx = other.middleX - middleX;
        double dy = other.middleY - middleY;
        double sum = radius + other.radius;
        return dx * dx + dy * dy <= sum * sum;
    }
}
