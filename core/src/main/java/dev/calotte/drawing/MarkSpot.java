package dev.calotte.drawing;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/** Where in a triangle a mark has the most room. */
final class MarkSpot {

    /** Between letters and the edges of their piece. */
    private static final double CLEAR = 0.6;

    private MarkSpot() {}

    /**
     * The place of the middle of a box that stays inside. Where its middle may be is the triangle with each edge moved
     * inwards by what the box reaches towards it; of that smaller one the middle of the circle inside is taken.
     *
     * @param corners three corners, counter-clockwise
     * @param box how large it is
     * @return the place, or nothing if the box does not fit
     */
    static Optional<Vector2D> in(List<Vector2D> corners, Box box) {
        double doubleArea = cross(corners.get(0), corners.get(1), corners.get(2));
        double[] side = new double[3];
        double[] reach = new double[3];
        double taken = 0;
        for (int k = 0; k < 3; k++) {
            Vector2D along = corners.get((k + 2) % 3).subtract(corners.get((k + 1) % 3));
            side[k] = along.getNorm();
            double toEdge =
                    (Math.abs(along.getY()) * box.width() + Math.abs(along.getX()) * box.height()) / 2 / side[k];
            reach[k] = CLEAR + toEdge;
            taken += reach[k] * side[k];
        }
        if (!(taken < doubleArea)) {
            return Optional.empty();
        }
        double left = (1 - taken / doubleArea) * doubleArea / (side[0] + side[1] + side[2]);
        Vector2D spot = Vector2D.ZERO;
        for (int k = 0; k < 3; k++) {
            spot = spot.add((reach[k] + left) * side[k] / doubleArea, corners.get(k));
        }
        return Optional.of(spot);
    }

    static Vector2D middle(List<Vector2D> corners) {
        return corners.get(0).add(corners.get(1)).add(corners.get(2)).scalarMultiply(1.0 / 3);
    }

    /** Twice the area between three corners, above 0 if they go counter-clockwise. */
    static double cross(Vector2D a, Vector2D b, Vector2D c) {
        return (b.getX() - a.getX()) * (c.getY() - a.getY()) - (c.getX() - a.getX()) * (b.getY() - a.getY());
    }
}
