package dev.calotte.sphere;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * A start for {@link Spacing#FITTED}, for every class: the corners added up by the sines of their parts of the arc,
 * brought to length 1. Edges are cut in equal arcs, and faces are divided about as evenly as by {@link Spacing#ARC}.
 * (A plain extension of the arc's own weights; common practice, no source.)
 */
record SinePlacement(Lattice lattice, double arcRad) implements Placement {

    @Override
    public double[] place(Vector3D a, Vector3D b, Vector3D c) {
        double[] xyz = new double[3 * lattice.pointCount()];
        for (int p = 0; p < lattice.pointCount(); p++) {
            int x = lattice.x(p);
            int y = lattice.y(p);
            Vector3D sum = new Vector3D(
                    sine(lattice.weightA(x, y)), a, sine(lattice.weightB(x, y)), b, sine(lattice.weightC(x, y)), c);
            System.arraycopy(sum.normalize().toArray(), 0, xyz, 3 * p, 3);
        }
        return xyz;
    }

    private double sine(int weight) {
        return StrictMath.sin(arcRad * weight / lattice.total());
    }
}
