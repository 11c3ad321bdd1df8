package dev.calotte.drawing;

import java.util.Arrays;

/**
 * A triangle as it is seen: its picture, and how near the eye each place of it is.
 *
 * @param index its number
 * @param xyz its corners' places to the right, upwards and towards the eye
 */
@SuppressWarnings("ArrayRecordComponent")
record Slab(int index, double[] xyz) {

    double left() {
        return Math.min(xyz[0], Math.min(xyz[3], xyz[6]));
    }

    double right() {
        return Math.max(xyz[0], Math.max(xyz[3], xyz[6]));
    }

    double middle() {
        return (xyz[2] + xyz[5] + xyz[8]) / 3;
    }

    double doubleArea() {
        return cross(xyz[0], xyz[1], xyz[3], xyz[4], xyz[6], xyz[7]);
    }

    private static double cross(double ax, double ay, double bx, double by, double cx, double cy) {
        return (bx - ax) * (cy - ay) - (cx - ax) * (by - ay);
    }

    /**
     * How much nearer the eye it is than another one, in the middle of what both cover.
     *
     * @param other another triangle
     * @param same how narrow a common area does not count
     * @return above 0 if it is nearer, 0 if they have no area in common
     */
    double ahead(Slab other, double same) {
        if (isApart(other, same) || other.isApart(this, same)) {
            return 0;
        }
        double[] common = xyz.clone();
        double sign = Math.signum(other.doubleArea());
        for (int k = 0; k < 3 && common.length > 0; k++) {
            int a = 3 * k;
            int b = 3 * ((k + 1) % 3);
            common = clipped(common, other.xyz[a], other.xyz[a + 1], other.xyz[b], other.xyz[b + 1], sign);
        }
        double ahead = 0;
        for (int i = 0; i < common.length; i += 3) {
            ahead += common[i + 2] - other.depth(common[i], common[i + 1]);
        }
        return common.length == 0 ? 0 : 3 * ahead / common.length;
    }

    /** Whether one of its own sides has the whole other triangle beyond it. */
    private boolean isApart(Slab other, double same) {
        double sign = Math.signum(doubleArea());
        for (int k = 0; k < 3; k++) {
            int a = 3 * k;
            int b = 3 * ((k + 1) % 3);
            double x = xyz[b] - xyz[a];
            double y = xyz[b + 1] - xyz[a + 1];
            double slack = same * Math.sqrt(x * x + y * y);
            boolean beyond = true;
            for (int c = 0; c < 9 && beyond; c += 3) {
                beyond = sign * (x * (other.xyz[c + 1] - xyz[a + 1]) - y * (other.xyz[c] - xyz[a])) <= slack;
            }
            if (beyond) {
                return true;
            }
        }
        return false;
    }

    /** What of a polygon lies on the inner side of a line (Sutherland and Hodgman, 1974). */
    private static double[] clipped(double[] polygon, double ax, double ay, double bx, double by, double sign) {
        double[] kept = new double[2 * polygon.length];
        int size = 0;
        for (int i = 0; i < polygon.length; i += 3) {
            int j = (i + 3) % polygon.length;
            double here = sign * cross(ax, ay, bx, by, polygon[i], polygon[i + 1]);
            double next = sign * cross(ax, ay, bx, by, polygon[j], polygon[j + 1]);
            if (here >= 0) {
                System.arraycopy(polygon, i, kept, size, 3);
                size += 3;
            }
            if (here >= 0 != next >= 0) {
                double part = here / (here - next);
                for (int c = 0; c < 3; c++) {
                    kept[size++] = polygon[i + c] + part * (polygon[j + c] - polygon[i + c]);
                }
            }
        }
        return Arrays.copyOf(kept, size);
    }

    /** How near the eye the triangle's plane is at a place. */
    double depth(double x, double y) {
        double second = cross(xyz[0], xyz[1], x, y, xyz[6], xyz[7]) / doubleArea();
        double third = cross(xyz[0], xyz[1], xyz[3], xyz[4], x, y) / doubleArea();
        return xyz[2] + second * (xyz[5] - xyz[2]) + third * (xyz[8] - xyz[2]);
    }
}
