package dev.calotte.geometry;

/**
 * Cuts a plane polygon into triangles at its corners, one ear after the other; that there always is one is Meisters'
 * two ears theorem (G. H. Meisters, "Polygons have ears", Amer. Math. Monthly 82, 1975). The work grows with the square
 * of the number of corners.
 */
public final class EarClipping {

    private final double[] x;
    private final double[] y;
    private final int[] next;
    private final int[] before;

    private EarClipping(double[] x, double[] y) {
        this.x = x;
        this.y = y;
        this.next = new int[x.length];
        this.before = new int[x.length];
        for (int i = 0; i < x.length; i++) {
            next[i] = (i + 1) % x.length;
            before[i] = (i + x.length - 1) % x.length;
        }
    }

    /**
     * Cuts a polygon into triangles without adding corners.
     *
     * @param x the corners, counter-clockwise
     * @param y the corners
     * @return three corner numbers for each of the n - 2 triangles, counter-clockwise
     * @throws IllegalArgumentException if the polygon crosses itself, runs clockwise or has fewer than three corners
     */
    public static int[] triangulate(double[] x, double[] y) {
        if (x.length < 3) {
            throw new IllegalArgumentException("a polygon has at least three corners");
        }
        return new EarClipping(x.clone(), y.clone()).clip();
    }

    private int[] clip() {
        int[] triangles = new int[3 * (x.length - 2)];
        int corner = 0;
        int waited = 0;
        int count = 0;
        for (int left = x.length; left > 2; ) {
            if (isEar(corner)) {
                triangles[count++] = before[corner];
                triangles[count++] = corner;
                triangles[count++] = next[corner];
                next[before[corner]] = next[corner];
                before[next[corner]] = before[corner];
                left--;
                waited = 0;
                // going on beyond the neighbour keeps the triangles from all meeting in one corner
                corner = next[next[corner]];
            } else if (++waited > left) {
                throw new IllegalArgumentException("the polygon crosses itself or runs clockwise");
            } else {
                corner = next[corner];
            }
        }
        return triangles;
    }

    private boolean isEar(int corner) {
        int a = before[corner];
        int c = next[corner];
        if (!(turn(a, corner, c) > 0)) {
            return false;
        }
        for (int p = next[c]; p != a; p = next[p]) {
            if (turn(a, corner, p) >= 0 && turn(corner, c, p) >= 0 && turn(c, a, p) >= 0) {
                return false;
            }
        }
        return true;
    }

    /** Twice the area of the triangle p, q, r, above 0 if it runs counter-clockwise. */
    private double turn(int p, int q, int r) {
        return (x[q] - x[p]) * (y[r] - y[p]) - (x[r] - x[p]) * (y[q] - y[p]);
    }
}
