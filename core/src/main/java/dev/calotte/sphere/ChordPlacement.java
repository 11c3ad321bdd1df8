package dev.calotte.sphere;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** {@link Spacing#CHORD}: the weighted sum of the corners, brought to length 1. */
record ChordPlacement(Lattice lattice) implements Placement {

    @Override
    public double[] place(Vector3D a, Vector3D b, Vector3D c) {
        double[] xyz = new double[3 * lattice.pointCount()];
        for (int p = 0; p < lattice.pointCount(); p++) {
            int x = lattice.x(p);
            int y = lattice.y(p);
            double wa = lattice.weightA(x, y);
            double wb = lattice.weightB(x, y);
            double wc = lattice.weightC(x, y);
            double px = wa * a.getX() + wb * b.getX() + wc * c.getX();
            double py = wa * a.getY() + wb * b.getY() + wc * c.getY();
            double pz = wa * a.getZ() + wb * b.getZ() + wc * c.getZ();
            double length = Math.sqrt(px * px + py * py + pz * pz);
            xyz[3 * p] = px / length;
            xyz[3 * p + 1] = py / length;
            xyz[3 * p + 2] = pz / length;
        }
        return xyz;
    }
}
