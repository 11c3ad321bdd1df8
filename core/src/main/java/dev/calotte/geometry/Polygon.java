package dev.calotte.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * A plane outline: corners joined by straight sides, the last to the first, counter-clockwise. Side i runs from corner
 * i to the next one. The unit is that of the coordinates.
 */
public class Polygon {

    private final double[] xy;

    Polygon(double[] xy) {
        if (xy.length < 6 || xy.length % 2 != 0) {
            throw new IllegalArgumentException("a polygon needs x and y of 3 corners at least");
        }
        this.xy = xy.clone();
        if (!(area() > 0)) {
            throw new IllegalArgumentException("the corners do not run counter-clockwise round an area");
        }
    }

    /**
     * A polygon.
     *
     * @param xy x and y of its corners, at least three, counter-clockwise
     * @return the polygon
     * @throws IllegalArgumentException if there are fewer corners, or they run clockwise
     */
    public static Polygon of(double... xy) {
        return new Polygon(xy);
    }

    /**
     * A polygon.
     *
     * @param corners its corners, at least three, counter-clockwise
     * @return the polygon
     * @throws IllegalArgumentException if there are fewer corners, or they run clockwise
     */
    public static Polygon of(List<Vector2D> corners) {
        return new Polygon(flat(corners));
    }

    static double[] flat(List<Vector2D> corners) {
        return corners.stream()
                .flatMapToDouble(c -> DoubleStream.of(c.getX(), c.getY()))
                .toArray();
    }

    /**
     * How many corners it has.
     *
     * @return the number of corners
     */
    public final int size() {
        return xy.length / 2;
    }

    /**
     * Where a corner is.
     *
     * @param corner from 0
     * @return its x
     */
    public final double x(int corner) {
        return xy[2 * corner];
    }

    /**
     * Where a corner is.
     *
     * @param corner from 0
     * @return its y
     */
    public final double y(int corner) {
        return xy[2 * corner + 1];
    }

    /**
     * A corner; the numbers go round, so the last is also number -1.
     *
     * @param corner any whole number
     * @return the corner
     */
    public final Vector2D corner(int corner) {
        int c = Math.floorMod(corner, size());
        return new Vector2D(xy[2 * c], xy[2 * c + 1]);
    }

    /**
     * Its corners.
     *
     * @return counter-clockwise; a new list
     */
    public final List<Vector2D> corners() {
        List<Vector2D> corners = new ArrayList<>(size());
        for (int c = 0; c < size(); c++) {
            corners.add(corner(c));
        }
        return corners;
    }

    /**
     * Its area, by the shoelace formula about the first corner.
     *
     * @return the area
     */
    public final double area() {
        double twice = 0;
        for (int i = 1; i < size() - 1; i++) {
            twice += (x(i) - x(0)) * (y(i + 1) - y(0)) - (x(i + 1) - x(0)) * (y(i) - y(0));
        }
        return twice / 2;
    }

    /**
     * How far it reaches in a direction, from its first point to its last.
     *
     * @param direction of length 1
     * @return its width along that direction
     */
    public final double extent(Vector2D direction) {
        return reach(direction) + reach(direction.negate());
    }

    /**
     * How far it reaches from the origin in a direction.
     *
     * @param direction of length 1
     * @return the largest distance along that direction
     */
    public final double reach(Vector2D direction) {
        double most = Double.NEGATIVE_INFINITY;
        for (int c = 0; c < size(); c++) {
            most = Math.max(most, x(c) * direction.getX() + y(c) * direction.getY());
        }
        return most;
    }

    /**
     * The part on one side of a line.
     *
     * @param outward of length 1, across the line
     * @param limit the distance from the origin, along {@code outward}, up to which it stays
     * @return the corners of what stays, fewer than three if nothing does. Where the polygon is hollow and falls into
     *     pieces, they stay joined along the line
     */
    public final List<Vector2D> clipped(Vector2D outward, double limit) {
        List<Vector2D> kept = new ArrayList<>();
        for (int c = 0; c < size(); c++) {
            Vector2D from = corner(c);
            Vector2D to = corner(c + 1);
            double over = from.dotProduct(outward) - limit;
            double next = to.dotProduct(outward) - limit;
            if (over <= 0) {
                kept.add(from);
            }
            if ((over < 0 && next > 0) || (over > 0 && next < 0)) {
                kept.add(new Vector2D(next / (next - over), from, -over / (next - over), to));
            }
        }
        return kept;
    }

    /**
     * The smallest convex polygon round it.
     *
     * @return its hull
     */
    public final ConvexPolygon hull() {
        return ConvexPolygon.round(corners());
    }
}
