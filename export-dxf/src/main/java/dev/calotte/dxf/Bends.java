package dev.calotte.dxf;

import dev.calotte.document.Polyline;

/** Tells arcs from sides that are straight in the file. */
final class Bends {

    /** A side that rises less over its chord is straight after rounding. */
    private static final double LEAST_RISE = 0.5e-6;

    private Bends() {}

    /** Whether the side that begins at a corner is an arc in the file. */
    static boolean bends(Polyline path, int corner) {
        if (path.bulge(corner) == 0) {
            return false;
        }
        int next = (corner + 1) % path.size();
        double across = path.x(next) - path.x(corner);
        double upwards = path.y(next) - path.y(corner);
        double rise = Math.abs(path.bulge(corner)) * Math.sqrt(across * across + upwards * upwards) / 2;
        return rise > LEAST_RISE;
    }
}
