package dev.calotte.sphere;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * {@link Spacing#ARC}. With n the frequency and i, j, k the steps of a point towards the corners A, B and C (i + j + k
 * = n), three great circles belong to it: the one through the points i/n of the arc from B to A and from C to A, and
 * likewise for j and k. They cross pairwise in three points on the face's side, whose sum gives the direction.
 */
record ArcPlacement(Lattice lattice, double arcRad) implements Placement {

    @Override
    public double[] place(Vector3D a, Vector3D b, Vector3D c) {
        int n = lattice.edgeParts();
        Vector3D[] towardsA = circles(a, b, c, n);
        Vector3D[] towardsB = circles(b, c, a, n);
        Vector3D[] towardsC = circles(c, a, b, n);
        Vector3D side = a.add(b).add(c);
        double[] xyz = new double[3 * lattice.pointCount()];
        for (int p = 0; p < lattice.pointCount(); p++) {
            int j = lattice.x(p);
            int k = lattice.y(p);
            int i = n - j - k;
            Vector3D point;
            if (k == 0) {
                point = onArc(a, b, j, n);
            } else if (i == 0) {
                point = onArc(b, c, k, n);
            } else if (j == 0) {
                point = onArc(c, a, i, n);
            } else {
                point = crossing(towardsA[i], towardsB[j], side)
                        .add(crossing(towardsB[j], towardsC[k], side))
                        .add(crossing(towardsC[k], towardsA[i], side))
                        .normalize();
            }
            xyz[3 * p] = point.getX();
            xyz[3 * p + 1] = point.getY();
            xyz[3 * p + 2] = point.getZ();
        }
        return xyz;
    }

    /** The normals of the great circles that cut the arcs from the two far corners at m/n of the way to a corner. */
    private Vector3D[] circles(Vector3D near, Vector3D far, Vector3D otherFar, int n) {
        Vector3D[] normals = new Vector3D[n];
        for (int m = 1; m < n; m++) {
            normals[m] = onArc(far, near, m, n).crossProduct(onArc(otherFar, near, m, n));
        }
        return normals;
    }

    /** The point m/n of the way along the arc between two corners; the same bits from either end. */
    private Vector3D onArc(Vector3D from, Vector3D to, int m, int n) {
        double whole = StrictMath.sin(arcRad);
        double weightFrom = StrictMath.sin((n - m) * arcRad / n) / whole;
        double weightTo = StrictMath.sin(m * arcRad / n) / whole;
        return new Vector3D(weightFrom, from, weightTo, to);
    }

    private static Vector3D crossing(Vector3D normal, Vector3D other, Vector3D side) {
        Vector3D crossing = normal.crossProduct(other).normalize();
        return crossing.dotProduct(side) < 0 ? crossing.negate() : crossing;
    }
}
