package dev.calotte.nest;

/**
 * What parts two convex bodies: the side that separates them best (separating axes), and their nearest points. The last
 * answer can be asked for, until the next question.
 */
final class Parting {

    private static final double ROUNDING = 1e-9;

    /** Far above the rounding of places, far below what matters between parts. */
    private static final double SLACK_MM = 1e-6;

    /** Of more bodies it is not remembered which side kept each pair apart. */
    private static final int MOST_REMEMBERED = 1000;

    private final Standing bodies;
    private final double spacing;
    private final int count;
    private final short[] kept;

    private double gap;
    private boolean own;
    private int side;
    private int corner;
    private double nearest;
    private double fromX;
    private double fromY;
    private double toX;
    private double toY;

    Parting(Standing bodies, double spacing) {
        this.bodies = bodies;
        this.spacing = spacing;
        this.count = bodies.x.length;
        this.kept = new short[count > MOST_REMEMBERED ? 0 : count * count];
    }

    /** Whether the spacing lies between i and j moved along x; if not, {@link #gap} and what belongs to it are known. */
    boolean apart(int i, int j, double shift) {
        if (keptApart(i, j, shift) || keptApart(j, i, -shift)) {
            return true;
        }
        gap = Double.NEGATIVE_INFINITY;
        if (sides(i, j, shift)) {
            return true;
        }
        double first = gap;
        if (sides(j, i, -shift)) {
            return true;
        }
        own = gap == first;
        return false;
    }

    /** What lies between the bodies, across the side of the owner that separates them best; below zero if they overlap. */
    double gap() {
        return gap;
    }

    /** Whether that side is one of the first body. */
    boolean own() {
        return own;
    }

    int side() {
        return side;
    }

    /** The corner of the other body that is nearest to that side. */
    int corner() {
        return corner;
    }

    double fromX() {
        return fromX;
    }

    double fromY() {
        return fromY;
    }

    double toX() {
        return toX;
    }

    double toY() {
        return toY;
    }

    /** Asks the side first that kept the two apart the last time. */
    private boolean keptApart(int i, int j, double shift) {
        int s = kept.length == 0 ? 0 : kept[i * count + j];
        if (s == 0) {
            return false;
        }
        double ax = bodies.normalX[i][s - 1];
        double ay = bodies.normalY[i][s - 1];
        double offset = ax * (shift - bodies.x[i][s - 1]) - ay * bodies.y[i][s - 1];
        double[] qx = bodies.x[j];
        double[] qy = bodies.y[j];
        for (int c = 0; c < qx.length; c++) {
            if (!(ax * qx[c] + ay * qy[c] + offset >= spacing)) {
                return false;
            }
        }
        return true;
    }

    private void keep(int i, int j, int s) {
        if (kept.length > 0) {
            kept[j * count + i] = 0;
            kept[i * count + j] = (short) (s + 1);
        }
    }

    /** Looks for the side of i that keeps j farthest off; true if that is far enough. */
    private boolean sides(int i, int j, double shift) {
        double[] px = bodies.x[i];
        double[] py = bodies.y[i];
        double[] qx = bodies.x[j];
        double[] qy = bodies.y[j];
        for (int s = 0; s < px.length; s++) {
            double ax = bodies.normalX[i][s];
            double ay = bodies.normalY[i][s];
            double offset = ax * (shift - px[s]) - ay * py[s];
            double least = Double.POSITIVE_INFINITY;
            int lowest = 0;
            // a side with a corner nearer than what is known already cannot be better; places may be no numbers
            for (int c = 0; c < qx.length && least + offset > gap; c++) {
                double reach = ax * qx[c] + ay * qy[c];
                if (!(reach >= least)) {
                    least = reach;
                    lowest = c;
                }
            }
            least += offset;
            if (least >= spacing) {
                keep(i, j, s);
                return true;
            }
            if (least > gap) {
                gap = least;
                side = s;
                corner = lowest;
            }
        }
        return false;
    }

    /** How far the other body, moved, is from the owner of the side that parts them best, if they do not overlap. */
    double distance(int i, int j, double move) {
        double known = cornerToSide(i, j, move);
        // what is farther than that side and that corner need not be looked at, but for rounding
        nearest = (known + SLACK_MM) * (known + SLACK_MM);
        nearest(i, j, -move, false);
        nearest(j, i, move, true);
        return Math.min(known, Math.sqrt(nearest));
    }

    /** The distance of the side of i from the corner of j, between their nearest points. */
    private double cornerToSide(int i, int j, double move) {
        int t = side + 1 == bodies.x[i].length ? 0 : side + 1;
        double ux = bodies.x[i][t] - bodies.x[i][side];
        double uy = bodies.y[i][t] - bodies.y[i][side];
        double vx = bodies.x[j][corner] + move - bodies.x[i][side];
        double vy = bodies.y[j][corner] - bodies.y[i][side];
        double share = Math.max(0, Math.min(1, (ux * vx + uy * vy) / (ux * ux + uy * uy)));
        fromX = bodies.x[i][side] + share * ux;
        fromY = bodies.y[i][side] + share * uy;
        toX = bodies.x[j][corner];
        toY = bodies.y[j][corner];
        double dx = vx - share * ux;
        double dy = vy - share * uy;
        return Math.sqrt(dx * dx + dy * dy);
    }

    /**
     * Looks for a side of j and a corner of i, moved, that are nearer than all before. No corner is nearer to a side than
     * to the line through it, which is told sooner.
     */
    private void nearest(int i, int j, double shift, boolean swapped) {
        double[] px = bodies.x[i];
        double[] py = bodies.y[i];
        double[] sx = bodies.x[j];
        double[] sy = bodies.y[j];
        for (int s = 0; s < sx.length; s++) {
            int t = s + 1 == sx.length ? 0 : s + 1;
            double ux = sx[t] - sx[s];
            double uy = sy[t] - sy[s];
            double ax = bodies.normalX[j][s];
            double ay = bodies.normalY[j][s];
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
