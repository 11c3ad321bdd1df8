package dev.calotte.geometry;

import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/** Where an outline crosses or touches itself, by comparing every two of its sides. */
public final class SelfCrossing {

    private final Polygon outline;

    private SelfCrossing(Polygon outline) {
        this.outline = outline;
    }

    /**
     * The same in words.
     *
     * @param outline an outline
     * @return for example {@code (120, -4) mm}, to the millimetre; nothing if the outline is simple
     */
    public static Optional<String> near(Polygon outline) {
        return of(outline).map(at -> "(" + Math.round(at.getX()) + ", " + Math.round(at.getY()) + ") mm");
    }

    /**
     * Looks for a place where two sides meet that are not neighbours, or where two neighbours run back on each other.
     *
     * @param outline an outline; the work grows with the square of its corners
     * @return a corner beside the first such place; nothing if the outline is simple
     */
    public static Optional<Vector2D> of(Polygon outline) {
        return new SelfCrossing(outline).first();
    }

    private Optional<Vector2D> first() {
        int size = outline.size();
        for (int side = 0; side < size; side++) {
            if (turnsBack(side)) {
                return Optional.of(outline.corner(side));
            }
            for (int other = side + 2; other < size; other++) {
                boolean neighbours = side == 0 && other == size - 1;
                if (!neighbours && meet(side, other)) {
                    return Optional.of(outline.corner(side));
                }
            }
        }
        return Optional.empty();
    }

    private boolean turnsBack(int corner) {
        Vector2D in = outline.corner(corner).subtract(outline.corner(corner - 1));
        Vector2D out = outline.corner(corner + 1).subtract(outline.corner(corner));
        double length = in.getNorm() * out.getNorm();
        double cross = in.getX() * out.getY() - in.getY() * out.getX();
        return length == 0 || (Math.abs(cross) <= 1e-12 * length && in.dotProduct(out) < 0);
    }

    private boolean meet(int side, int other) {
        Vector2D a = outline.corner(side);
        Vector2D b = outline.corner(side + 1);
        Vector2D c = outline.corner(other);
        Vector2D d = outline.corner(other + 1);
        return turn(a, b, c) * turn(a, b, d) <= 0 && turn(c, d, a) * turn(c, d, b) <= 0 && boxesMeet(a, b, c, d);
    }

    private static boolean boxesMeet(Vector2D a, Vector2D b, Vector2D c, Vector2D d) {
        return Math.max(a.getX(), b.getX()) >= Math.min(c.getX(), d.getX())
                && Math.max(c.getX(), d.getX()) >= Math.min(a.getX(), b.getX())
                && Math.max(a.getY(), b.getY()) >= Math.min(c.getY(), d.getY())
                && Math.max(c.getY(), d.getY()) >= Math.min(a.getY(), b.getY());
    }

    private static double turn(Vector2D p, Vector2D q, Vector2D r) {
        return (q.getX() - p.getX()) * (r.getY() - p.getY()) - (r.getX() - p.getX()) * (q.getY() - p.getY());
    }
}
