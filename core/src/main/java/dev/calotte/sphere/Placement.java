package dev.calotte.sphere;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** Places the lattice points of one face on the unit sphere. */
interface Placement {

    /**
     * Places every point of the closed face.
     *
     * @param a the face's first corner
     * @param b the second
     * @param c the third
     * @return x, y and z of each lattice point, in the lattice's order
     */
    double[] place(Vector3D a, Vector3D b, Vector3D c);

    /** The placement of a spacing, of fitted its start; the breakdown must be one that the spacing knows. */
    static Placement of(Spacing spacing, Solid solid, Lattice lattice) {
        return switch (spacing) {
            case CHORD -> new ChordPlacement(lattice);
            case ARC -> new ArcPlacement(lattice, solid.centralAngleRad());
            case MIDARC -> new MidarcPlacement(lattice);
            case FITTED -> new SinePlacement(lattice, solid.centralAngleRad());
        };
    }
}
