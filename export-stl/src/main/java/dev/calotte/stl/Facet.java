package dev.calotte.stl;

/**
 * A triangle of the surface.
 *
 * @param a a corner
 * @param b the next, counter-clockwise seen from outside
 * @param c the last
 */
record Facet(Place a, Place b, Place c) {

    boolean hasArea() {
        double[] cross = cross();
        return cross[0] * cross[0] + cross[1] * cross[1] + cross[2] * cross[2] > 0;
    }

    /** The unit normal by the right-hand rule; not a number without an area. */
    float[] normal() {
        double[] cross = cross();
        double length = twiceArea(cross);
        return new float[] {(float) (cross[0] / length), (float) (cross[1] / length), (float) (cross[2] / length)};
    }

    /** Six times the signed volume of the tetrahedron that the facet makes with the origin. */
    double sixfoldVolumeToOrigin() {
        double[] cross = cross();
        return a.x() * cross[0] + a.y() * cross[1] + a.z() * cross[2];
    }

    private static double twiceArea(double... cross) {
        return Math.sqrt(cross[0] * cross[0] + cross[1] * cross[1] + cross[2] * cross[2]);
    }

    private double[] cross() {
        double ux = (double) b.x() - a.x();
        double uy = (double) b.y() - a.y();
        double uz = (double) b.z() - a.z();
        double vx = (double) c.x() - a.x();
        double vy = (double) c.y() - a.y();
        double vz = (double) c.z() - a.z();
        return new double[] {uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx};
    }
}
