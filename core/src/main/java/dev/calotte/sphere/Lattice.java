package dev.calotte.sphere;

import java.util.Arrays;

/**
 * The triangular lattice over one face of the solid, in whole numbers; the same for every face.
 *
 * <p>A lattice point is {@code x + y w} with w a turn by 60° to the left. The face's corners are A = 0, B = b + c w and
 * C = w B. A point's weights over A, B and C are {@code T - s - t, s, t} with {@code s = x (b + c) + y c} and
 * {@code t = y b - x c}; they add up to T, and are all at least 0 exactly when the point lies in the closed face.
 */
final class Lattice {

    private final int b;
    private final int c;
    private final int total;
    private final int width;
    private final int edgeParts;
    private final int[] points;
    private final int[] innerNumber;
    private final int[] innerPoint;

    Lattice(Breakdown breakdown) {
        this.b = breakdown.b();
        this.c = breakdown.c();
        this.total = Math.toIntExact(breakdown.triangulationNumber());
        this.width = b + c + 1;
        this.edgeParts = gcd(b, c);
        this.innerNumber = new int[width * width];
        int[] found = new int[2 * width * width];
        int[] innerFound = new int[width * width];
        int count = 0;
        int inner = 0;
        for (int y = 0; y <= b + c; y++) {
            for (int x = -c; x <= b; x++) {
                int least = Math.min(weightA(x, y), Math.min(weightB(x, y), weightC(x, y)));
                if (least > 0) {
                    innerFound[inner] = count / 2;
                    innerNumber[slot(x, y)] = inner++;
                }
                if (least >= 0) {
                    found[count++] = x;
                    found[count++] = y;
                }
            }
        }
        this.points = Arrays.copyOf(found, count);
        this.innerPoint = Arrays.copyOf(innerFound, inner);
    }

    private static int gcd(int p, int q) {
        return q == 0 ? p : gcd(q, p % q);
    }

    private int slot(int x, int y) {
        return (x + c) * width + y;
    }

    int weightA(int x, int y) {
        return total - weightB(x, y) - weightC(x, y);
    }

    int weightB(int x, int y) {
        return x * (b + c) + y * c;
    }

    int weightC(int x, int y) {
        return y * b - x * c;
    }

    /** T, to which the weights add up. */
    int total() {
        return total;
    }

    /** How many parts an edge of the solid has: lattice points on it, less one. */
    int edgeParts() {
        return edgeParts;
    }

    /** How many lattice points lie in the closed face. */
    int pointCount() {
        return points.length / 2;
    }

    int x(int point) {
        return points[2 * point];
    }

    int y(int point) {
        return points[2 * point + 1];
    }

    /** How many lattice points lie strictly inside the face. */
    int innerCount() {
        return innerPoint.length;
    }

    /** The lattice point that is the inner point with this number. */
    int innerPoint(int inner) {
        return innerPoint[inner];
    }

    /** The number, from 0, of an inner point. */
    int innerNumberAt(int x, int y) {
        return innerNumber[slot(x, y)];
    }

    /** The number, from 0, of the inner point with these weights of B and C. */
    int innerNumber(int weightB, int weightC) {
        int x = (int) (((long) weightB * b - (long) weightC * c) / total);
        int y = (int) (((long) weightC * (b + c) + (long) weightB * c) / total);
        return innerNumber[slot(x, y)];
    }

    /**
     * The small triangles that belong to the face, six numbers each: x and y of three corners, counter-clockwise. A
     * triangle belongs where its centroid lies; one whose centroid lies on an edge (class II) is listed by both faces
     * and marked in {@link #owningSide}.
     */
    int[] triangles() {
        int[] found = new int[6 * (2 * total + 6 * width)];
        int count = 0;
        for (int y = -1; y <= b + c; y++) {
            for (int x = -c - 1; x <= b; x++) {
                count = add(found, count, x, y, x + 1, y, x, y + 1);
                count = add(found, count, x + 1, y, x + 1, y + 1, x, y + 1);
            }
        }
        return Arrays.copyOf(found, count);
    }

    private int add(int[] found, int count, int... xy) {
        if (centroidA(xy) < 0 || centroidB(xy) < 0 || centroidC(xy) < 0) {
            return count;
        }
        System.arraycopy(xy, 0, found, count, 6);
        return count + 6;
    }

    private int centroidA(int... xy) {
        return weightA(xy[0], xy[1]) + weightA(xy[2], xy[3]) + weightA(xy[4], xy[5]);
    }

    private int centroidB(int... xy) {
        return weightB(xy[0], xy[1]) + weightB(xy[2], xy[3]) + weightB(xy[4], xy[5]);
    }

    private int centroidC(int... xy) {
        return weightC(xy[0], xy[1]) + weightC(xy[2], xy[3]) + weightC(xy[4], xy[5]);
    }

    /** The side of the face (0 = AB, 1 = BC, 2 = CA) on which a listed triangle's centroid lies, or -1 if inside. */
    int owningSide(int... xy) {
        if (centroidC(xy) == 0) {
            return 0;
        }
        if (centroidA(xy) == 0) {
            return 1;
        }
        return centroidB(xy) == 0 ? 2 : -1;
    }
}
