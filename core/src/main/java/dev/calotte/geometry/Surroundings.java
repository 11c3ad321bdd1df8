package dev.calotte.geometry;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * What an outline leaves of its own bounding rectangle, as convex pieces that may lie on each other: beyond each side of
 * its hull all that there is up to the rectangle, and its hollows, cut into triangles ({@link EarClipping}). What is
 * outside the rectangle is not told.
 */
public final class Surroundings {

    /** Thinner pieces are rounding: far below what any tool can hold. */
    private static final double ROUNDING_MM = 1e-7;

    private final Polygon outline;
    private final ConvexPolygon hull;
    private final List<ConvexPolygon> pieces = new ArrayList<>();

    private Surroundings(Polygon outline) {
        this.outline = outline;
        this.hull = outline.hull();
    }

    /**
     * Cuts what surrounds an outline into pieces.
     *
     * @param outline an outline that does not cross itself, in millimetres
     * @return the pieces, none if it is a rectangle along the axes
     * @throws IllegalArgumentException if the outline crosses itself
     */
    public static List<ConvexPolygon> of(Polygon outline) {
        Surroundings all = new Surroundings(outline);
        all.beyondTheHull();
        all.hollows();
        return List.copyOf(all.pieces);
    }

    private void beyondTheHull() {
        Vector2D right = new Vector2D(1, 0);
        Vector2D up = new Vector2D(0, 1);
        double x = -outline.reach(right.negate());
        double y = -outline.reach(up.negate());
        double endX = outline.reach(right);
        double endY = outline.reach(up);
        ConvexPolygon box = ConvexPolygon.of(x, y, endX, y, endX, endY, x, endY);
        for (int side = 0; side < hull.size(); side++) {
            Vector2D out = hull.outward(side);
            double limit = hull.reach(out);
            if (box.reach(out) > limit + ROUNDING_MM) {
                add(box.clipped(out.negate(), -limit));
            }
        }
    }

    private void hollows() {
        int first = 0;
        while (!isOnHull(first)) {
            first++;
        }
        int from = first;
        for (int corner = first + 1; corner <= first + outline.size(); corner++) {
            if (isOnHull(corner)) {
                if (corner > from + 1) {
                    hollow(from, corner);
                }
                from = corner;
            }
        }
    }

    private boolean isOnHull(int corner) {
        for (int side = 0; side < hull.size(); side++) {
            Vector2D out = hull.outward(side);
            if (outline.corner(corner).dotProduct(out) >= hull.reach(out) - ROUNDING_MM) {
                return true;
            }
        }
        return false;
    }

    /** The way from one corner to the other is walked backwards: what lies beside it is on its right. */
    private void hollow(int from, int to) {
        int size = to - from + 1;
        double[] x = new double[size];
        double[] y = new double[size];
        for (int c = 0; c < size; c++) {
            x[c] = outline.corner(to - c).getX();
            y[c] = outline.corner(to - c).getY();
        }
        int[] corners = EarClipping.triangulate(x, y);
        for (int t = 0; t < corners.length; t += 3) {
            List<Vector2D> triangle = new ArrayList<>();
            for (int c = t; c < t + 3; c++) {
                triangle.add(new Vector2D(x[corners[c]], y[corners[c]]));
            }
            add(triangle);
        }
    }

    private void add(List<Vector2D> corners) {
        if (corners.size() >= 3 && isThick(corners)) {
            pieces.add(ConvexPolygon.round(corners));
        }
    }

    /** What is no thicker than rounding has no hull either. */
    private static boolean isThick(List<Vector2D> corners) {
        double twice = 0;
        double longest = 0;
        for (int c = 1; c < corners.size(); c++) {
            Vector2D a = corners.get(c - 1).subtract(corners.get(0));
            Vector2D b = corners.get(c).subtract(corners.get(0));
            twice += a.getX() * b.getY() - a.getY() * b.getX();
            longest = Math.max(longest, Math.max(b.getNorm(), b.distance(a)));
        }
        return twice > ROUNDING_MM * longest;
    }
}
