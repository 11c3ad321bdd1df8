package dev.calotte.nest;

import dev.calotte.geometry.ConvexPolygon;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * Places of a few parts with fixed turns in a field, of which some pairs are kept apart by a chosen half-plane each: a
 * linear programme in the places.
 */
final class SidePlanes {

    /** Violations below this are rounding, in millimetres. */
    static final double ROUNDING_MM = 1e-7;

    private static final Vector2D RIGHT = new Vector2D(1, 0);
    private static final Vector2D UP = new Vector2D(0, 1);

    private final int parts;
    private final double[] least;
    private final double[] range;
    private final List<double[]> rows = new ArrayList<>();
    private final List<Double> limits = new ArrayList<>();

    SidePlanes(List<ConvexPolygon> outlines, Field field) {
        this.parts = outlines.size();
        this.least = new double[2 * parts];
        this.range = new double[2 * parts];
        for (int i = 0; i < parts; i++) {
            ConvexPolygon outline = outlines.get(i);
            least[2 * i] = outline.reach(RIGHT.negate());
            least[2 * i + 1] = outline.reach(UP.negate());
            range[2 * i] = field.length() - outline.extent(RIGHT);
            range[2 * i + 1] = field.width() - outline.extent(UP);
            centre(2 * i);
            centre(2 * i + 1);
        }
    }

    /** What touches both edges lies midway. */
    private void centre(int place) {
        double beyond = Room.beyondMm(0, range[place]);
        if (Double.isFinite(beyond)) {
            least[place] -= beyond;
            range[place] += 2 * beyond;
        }
    }

    /** Whether each part alone lies in the field. */
    boolean hasRoom() {
        for (double free : range) {
            if (free < -ROUNDING_MM) {
                return false;
            }
        }
        return true;
    }

    /** Whether two parts can be on the right sides of a half-plane, wherever the others are. */
    boolean allows(int i, int j, double[] plane) {
        double most = 0;
        for (int axis = 0; axis < 2; axis++) {
            double low = least[2 * j + axis] - least[2 * i + axis];
            double end = plane[axis] > 0 ? low + range[2 * j + axis] : low - range[2 * i + axis];
            most += plane[axis] * end;
        }
        return most >= plane[2] - ROUNDING_MM;
    }

    /** Keeps part j from part i by a half-plane. */
    void push(int i, int j, double[] plane) {
        double[] row = new double[2 * parts];
        double limit = plane[2];
        for (int axis = 0; axis < 2; axis++) {
            row[2 * j + axis] = plane[axis];
            row[2 * i + axis] = -plane[axis];
            limit -= plane[axis] * (least[2 * j + axis] - least[2 * i + axis]);
        }
        rows.add(row);
        limits.add(limit);
    }

    void pop() {
        rows.remove(rows.size() - 1);
        limits.remove(limits.size() - 1);
    }

    /** The places, x and y for each part; null if there are none. */
    double[] solve() {
        List<Integer> above = new ArrayList<>();
        List<Integer> below = new ArrayList<>();
        for (int row = 0; row < rows.size(); row++) {
            (limits.get(row) > 0 ? above : below).add(row);
        }
        Rows programme = new Rows(above, below);
        Simplex simplex = new Simplex(programme, programme.need(), programme.have(), new BitSet());
        simplex.minimise();
        if (!simplex.feasible(ROUNDING_MM)) {
            return null;
        }
        double[] places = simplex.uses();
        for (int v = 0; v < places.length; v++) {
            places[v] += least[v];
        }
        return places;
    }

    /** The chosen half-planes, turned so that no limit is below 0, then the ranges. */
    private final class Rows implements Programme {

        private final List<Integer> above;
        private final List<Integer> below;

        Rows(List<Integer> above, List<Integer> below) {
            this.above = above;
            this.below = below;
        }

        double[] need() {
            return above.stream().mapToDouble(limits::get).toArray();
        }

        double[] have() {
            double[] have = new double[below.size() + 2 * parts];
            for (int row = 0; row < below.size(); row++) {
                have[row] = -limits.get(below.get(row));
            }
            for (int v = 0; v < 2 * parts; v++) {
                have[below.size() + v] = Math.max(0, range[v]);
            }
            return have;
        }

        @Override
        public int count() {
            return 2 * parts;
        }

        @Override
        public double[] column(int variable) {
            double[] column = new double[rows.size() + 2 * parts];
            for (int row = 0; row < above.size(); row++) {
                column[row] = rows.get(above.get(row))[variable];
            }
            for (int row = 0; row < below.size(); row++) {
                column[above.size() + row] = -rows.get(below.get(row))[variable];
            }
            column[rows.size() + variable] = 1;
            return column;
        }

        @Override
        public double cost(int column) {
            return 0;
        }

        @Override
        public double dearest() {
            return 0;
        }
    }
}
