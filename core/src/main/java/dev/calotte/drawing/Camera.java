package dev.calotte.drawing;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * A parallel projection: what lies in space, to the right and up on paper and towards the eye.
 *
 * @param right a unit vector
 * @param up a unit vector square to it
 */
record Camera(Vector3D right, Vector3D up) {

    /**
     * Looks at the centre.
     *
     * @param bearingDegrees where the eye stands, counter-clockwise from the start ray seen from above
     * @param elevationDegrees how far above the horizon it stands
     */
    static Camera from(double bearingDegrees, double elevationDegrees) {
        double bearing = StrictMath.toRadians(bearingDegrees);
        double elevation = StrictMath.toRadians(elevationDegrees);
        double sine = StrictMath.sin(elevation);
        return new Camera(
                new Vector3D(-StrictMath.sin(bearing), StrictMath.cos(bearing), 0),
                new Vector3D(
                        -sine * StrictMath.cos(bearing), -sine * StrictMath.sin(bearing), StrictMath.cos(elevation)));
    }

    double across(Vector3D point) {
        return right.dotProduct(point);
    }

    double upwards(Vector3D point) {
        return up.dotProduct(point);
    }

    /** How near the eye a point is. */
    double towards(Vector3D point) {
        return right.crossProduct(up).dotProduct(point);
    }
}
