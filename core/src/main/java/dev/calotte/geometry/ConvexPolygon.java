package dev.calotte.geometry;

import java.util.Collection;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.apache.commons.math3.geometry.euclidean.twod.hull.MonotoneChain;

/**
 * A {@link Polygon} without hollow corners.
 *
 * <pre>{@code
 * ConvexPolygon net = ConvexPolygon.of(0, 0, 900, 0, 450, 780);
 * ConvexPolygon cut = net.offset(10, 10, 25);
 * }</pre>
 */
public final class ConvexPolygon extends Polygon {

    /** How hollow a corner may be, as a part of the square of the polygon's length, for rounding. */
    private static final double FLAT = 1e-12;

    /** Points of a hull that lie nearer to each other, as a part of its size, are one: sides of no length have no way out. */
    private static final double SAME = 1e-10;

    ConvexPolygon(double[] xy) {
        super(xy);
        double least = -FLAT
                * IntStream.range(1, size())
                        .mapToDouble(c -> corner(c).distanceSq(corner(0)))
                        .max()
                        .orElseThrow();
        for (int c = 0; c < size(); c++) {
            Vector2D in = corner(c).subtract(corner(c - 1));
            Vector2D out = corner(c + 1).subtract(corner(c));
            if (in.getX() * out.getY() - in.getY() * out.getX() < least) {
                throw new IllegalArgumentException("the polygon is hollow at its corner " + c);
            }
        }
    }

    /**
     * A convex polygon.
     *
     * @param xy x and y of its corners, at least three, counter-clockwise
     * @return the polygon
     * @throws IllegalArgumentException if there are fewer corners, they run clockwise or make a hollow
     */
    public static ConvexPolygon of(double... xy) {
        return new ConvexPolygon(xy);
    }

    /**
     * A convex polygon.
     *
     * @param corners its corners, at least three, counter-clockwise
     * @return the polygon
     * @throws IllegalArgumentException if there are fewer corners, they run clockwise or make a hollow
     */
    public static ConvexPolygon of(List<Vector2D> corners) {
        return new ConvexPolygon(flat(corners));
    }

    /**
     * The smallest convex polygon round some points.
     *
     * @param points at least three that do not lie on one line
     * @return their hull
     */
    public static ConvexPolygon round(Collection<Vector2D> points) {
        Vector2D any = points.iterator().next();
        double size = points.stream().mapToDouble(any::distance).max().orElseThrow();
        return of(List.copyOf(new MonotoneChain(false, SAME * size).findHullVertices(points)));
    }

    /**
     * A triangle with its side {@code a} along x from the origin, then {@code b} and {@code c} counter-clockwise.
     *
     * @param triangle its sides
     * @return its corners: (0, 0), (a, 0) and the one above
     */
    public static ConvexPolygon of(Triangle triangle) {
        double a = triangle.a();
        // the difference of squares as a product keeps its digits where the sides are nearly equal
        double apex = (a + (triangle.c() - triangle.b()) * (triangle.c() + triangle.b()) / a) / 2;
        return of(0, 0, a, 0, apex, triangle.altitude(0));
    }

    /**
     * The direction that points out of a side.
     *
     * @param side from 0
     * @return square to the side, of length 1
     */
    public Vector2D outward(int side) {
        Vector2D along = corner(side + 1).subtract(corner(side)).normalize();
        return new Vector2D(along.getY(), -along.getX());
    }

    /**
     * The polygon with every side moved parallel to itself, corners mitred.
     *
     * @param outward how far each side moves outwards, below 0 inwards
     * @return the polygon between the moved lines
     * @throws IllegalArgumentException if nothing is left, or a side is used up
     */
    public ConvexPolygon offset(double... outward) {
        double[] moved = new double[2 * size()];
        for (int c = 0; c < size(); c++) {
            int before = Math.floorMod(c - 1, size());
            Vector2D corner = mitre(c, outward[before], outward[c]);
            moved[2 * c] = corner.getX();
            moved[2 * c + 1] = corner.getY();
        }
        for (int c = 0; c < size(); c++) {
            int next = 2 * ((c + 1) % size());
            Vector2D along = corner(c + 1).subtract(corner(c));
            if (along.getX() * (moved[next] - moved[2 * c]) + along.getY() * (moved[next + 1] - moved[2 * c + 1])
                    <= 0) {
                throw new IllegalArgumentException("the offset uses up side " + c);
            }
        }
        return of(moved);
    }

    /**
     * Where the lines of the two sides at a corner cross after they have moved.
     *
     * @param corner from 0
     * @param before how far the side that ends there moves outwards
     * @param after how far the side that begins there moves outwards
     * @return their crossing
     */
    public Vector2D mitre(int corner, double before, double after) {
        Vector2D n = outward(Math.floorMod(corner - 1, size()));
        Vector2D m = outward(corner);
        double cross = n.getX() * m.getY() - n.getY() * m.getX();
        double x = (before * m.getY() - after * n.getY()) / cross;
        double y = (after * n.getX() - before * m.getX()) / cross;
        return corner(corner).add(new Vector2D(x, y));
    }

    /**
     * The narrowest strip that it passes through, turned as need be: of a triangle the smallest altitude.
     *
     * @return the least of its widths; it is taken across one of the sides (M. E. Houle and G. T. Toussaint,
     *     "Computing the width of a set", 1988, section 2)
     */
    public double narrowestWidth() {
        double least = Double.POSITIVE_INFINITY;
        for (int side = 0; side < size(); side++) {
            least = Math.min(least, extent(outward(side)));
        }
        return least;
    }
}
