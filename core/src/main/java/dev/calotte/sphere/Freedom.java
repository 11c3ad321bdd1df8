package dev.calotte.sphere;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * How far a vertex may move without breaking the symmetry.
 *
 * @param dimension 2: on the sphere; 1: on a great circle; 0: not at all
 * @param normal the unit normal of the great circle's plane; zero if there is none
 */
record Freedom(int dimension, Vector3D normal) {

    /** The freedom of a vertex that some motions, the resting one among them, leave where it is. */
    static Freedom of(List<Motion> stays) {
        if (stays.size() == 1) {
            return new Freedom(2, Vector3D.ZERO);
        }
        Motion last = stays.get(stays.size() - 1);
        // two or more mirrors, or a rotation, leave a vertex on an axis
        if (stays.size() > 2 || !last.mirrors()) {
            return new Freedom(0, Vector3D.ZERO);
        }
        Vector3D widest = Vector3D.ZERO;
        for (Vector3D axis : List.of(Vector3D.PLUS_I, Vector3D.PLUS_J, Vector3D.PLUS_K)) {
            Vector3D moved = axis.subtract(last.apply(axis));
            widest = moved.getNormSq() > widest.getNormSq() ? moved : widest;
        }
        return new Freedom(1, widest.normalize());
    }

    /** A direction, of length 1, in which a point may move: of number 0, or 1 on the sphere. */
    Vector3D direction(int number, Vector3D point) {
        if (dimension == 1) {
            return normal.crossProduct(point).normalize();
        }
        Vector3D first = point.orthogonal();
        return number == 0 ? first : point.crossProduct(first);
    }

    /** The point on the sphere, and on the great circle if there is one, that is nearest to a point. */
    Vector3D settle(Vector3D point) {
        return new Vector3D(1, point, -point.dotProduct(normal), normal).normalize();
    }
}
