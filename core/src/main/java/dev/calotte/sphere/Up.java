package dev.calotte.sphere;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * What part of the solid points up. Seen from above the start ray, from which everything is counted
 * counter-clockwise, is the x axis.
 */
public enum Up {
    /** A corner of the solid is the crown; the start ray runs over an edge that leaves it. */
    VERTEX,
    /** The middle of an edge is the crown; the start ray runs along that edge. */
    EDGE,
    /** The middle of a face is the crown; the start ray runs towards a corner of that face. */
    FACE;

    /**
     * The frame in which the solid stands: rows are the unit vectors of x, y and z in the solid's own coordinates.
     *
     * @param solid the solid
     * @return three unit vectors, a right-handed frame
     */
    Vector3D[] frame(Solid solid) {
        if (this == VERTEX) {
            return new Vector3D[] {Vector3D.PLUS_I, Vector3D.PLUS_J, Vector3D.PLUS_K};
        }
        Vector3D first = solid.corner(solid.faceCorner(0, 0));
        Vector3D second = solid.corner(solid.faceCorner(0, 1));
        Vector3D third = solid.corner(solid.faceCorner(0, 2));
        Vector3D z = (this == EDGE ? first.add(second) : first.add(second).add(third)).normalize();
        Vector3D ahead = this == EDGE ? second : first;
        Vector3D x = ahead.subtract(z.scalarMultiply(ahead.dotProduct(z))).normalize();
        return new Vector3D[] {x, z.crossProduct(x), z};
    }
}
