package dev.calotte.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * The sides of an outline that may be hollow, as what lies inside meets them. Each question looks at every side.
 *
 * @param outline an outline that does not cross itself
 */
public record Boundary(Polygon outline) {

    /**
     * Where a ray meets the outline. A side counts with its lower end and without its upper one, so that a ray through a
     * corner crosses there once, or not at all.
     *
     * @param from where the ray begins
     * @param along its direction, of length 1
     * @return the distances from its beginning, rising
     */
    public List<Double> crossings(Vector2D from, Vector2D along) {
        List<Double> distances = new ArrayList<>();
        for (int c = 0; c < outline.size(); c++) {
            Vector2D a = outline.corner(c).subtract(from);
            Vector2D b = outline.corner(c + 1).subtract(from);
            double left = cross(along, a);
            double right = cross(along, b);
            if (left > 0 != right > 0) {
                double share = left / (left - right);
                double distance = new Vector2D(1 - share, a, share, b).dotProduct(along);
                if (distance > 0) {
                    distances.add(distance);
                }
            }
        }
        Collections.sort(distances);
        return distances;
    }

    /**
     * Whether a point lies inside.
     *
     * @param point a point
     * @return whether it does; on the outline itself either answer may come
     */
    public boolean holds(Vector2D point) {
        return crossings(point, new Vector2D(1, 0)).size() % 2 == 1;
    }

    /**
     * How far a stretch keeps off the outline.
     *
     * @param from its one end
     * @param to its other end, which may be the same
     * @return the distance between the stretch and the nearest side; 0 where they cross
     */
    public double distance(Vector2D from, Vector2D to) {
        double least = Double.POSITIVE_INFINITY;
        for (int c = 0; c < outline.size(); c++) {
            least = Math.min(least, distance(from, to, outline.corner(c), outline.corner(c + 1)));
        }
        return least;
    }

    /**
     * How far another outline keeps off this one.
     *
     * @param other another outline
     * @return the distance between the two lines; 0 where they cross
     */
    public double distance(Polygon other) {
        double least = Double.POSITIVE_INFINITY;
        for (int c = 0; c < other.size(); c++) {
            least = Math.min(least, distance(other.corner(c), other.corner(c + 1)));
        }
        return least;
    }

    private static double distance(Vector2D a, Vector2D b, Vector2D c, Vector2D d) {
        Vector2D one = b.subtract(a);
        Vector2D two = d.subtract(c);
        boolean apart = cross(one, c.subtract(a)) > 0 == cross(one, d.subtract(a)) > 0
                || cross(two, a.subtract(c)) > 0 == cross(two, b.subtract(c)) > 0;
        return apart ? Math.min(Math.min(off(a, c, d), off(b, c, d)), Math.min(off(c, a, b), off(d, a, b))) : 0;
    }

    /** How far a point is from a stretch. */
    private static double off(Vector2D point, Vector2D from, Vector2D to) {
        Vector2D way = to.subtract(from);
        double square = way.getNormSq();
        double share = square > 0 ? point.subtract(from).dotProduct(way) / square : 0;
        return point.distance(from.add(Math.max(0, Math.min(1, share)), way));
    }

    private static double cross(Vector2D a, Vector2D b) {
        return a.getX() * b.getY() - a.getY() * b.getX();
    }
}
