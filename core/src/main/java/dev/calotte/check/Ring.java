package dev.calotte.check;

import dev.calotte.document.Polyline;
import dev.calotte.geometry.ConvexPolygon;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * A closed outline as it was read: whatever it may be, clockwise too.
 *
 * @param corners its corners in millimetres, at least three
 */
public record Ring(List<Vector2D> corners) {

    /**
     * Checks and copies the list.
     *
     * @param corners its corners
     * @throws IllegalArgumentException if there are fewer than three
     */
    public Ring {
        if (corners.size() < 3) {
            throw new IllegalArgumentException("an outline of " + corners.size() + " corners encloses nothing");
        }
        corners = List.copyOf(corners);
    }

    /**
     * An outline.
     *
     * @param xy x and y of each corner
     * @return the ring
     * @throws IllegalArgumentException if there are fewer than three corners
     */
    public static Ring of(List<Double> xy) {
        List<Vector2D> corners = new ArrayList<>();
        for (int i = 0; i + 1 < xy.size(); i += 2) {
            corners.add(new Vector2D(xy.get(i), xy.get(i + 1)));
        }
        return new Ring(corners);
    }

    static Ring of(Polyline path) {
        List<Vector2D> corners = new ArrayList<>();
        for (int i = 0; i < path.size(); i++) {
            corners.add(new Vector2D(path.x(i), path.y(i)));
        }
        return new Ring(corners);
    }

    /**
     * Whether its corners lie round something, so that it has a hull.
     *
     * @return false if all of them lie on one line, or somewhere that cannot be reckoned with
     */
    public boolean hasExtent() {
        try {
            return ConvexPolygon.round(corners).area() < Double.POSITIVE_INFINITY;
        } catch (IllegalArgumentException onOneLine) {
            return false;
        }
    }

    int size() {
        return corners.size();
    }

    Vector2D corner(int i) {
        return corners.get(Math.floorMod(i, size()));
    }

    /**
     * The area inside.
     *
     * @return above 0 if it runs counter-clockwise
     */
    public double area() {
        double twice = 0;
        for (int i = 1; i + 1 < size(); i++) {
            twice += corner(i + 1).crossProduct(corner(0), corner(i));
        }
        return twice / 2;
    }

    double length() {
        double length = 0;
        for (int i = 0; i < size(); i++) {
            length += corner(i).distance(corner(i + 1));
        }
        return length;
    }

    Vector2D least() {
        double x = corners.stream().mapToDouble(Vector2D::getX).min().orElseThrow();
        double y = corners.stream().mapToDouble(Vector2D::getY).min().orElseThrow();
        return new Vector2D(x, y);
    }

    Vector2D most() {
        double x = corners.stream().mapToDouble(Vector2D::getX).max().orElseThrow();
        double y = corners.stream().mapToDouble(Vector2D::getY).max().orElseThrow();
        return new Vector2D(x, y);
    }

    Vector2D middle() {
        return least().add(most()).scalarMultiply(0.5);
    }

    Ring shifted(Vector2D by) {
        return new Ring(corners.stream().map(by::add).toList());
    }

    Ring mirrored() {
        return new Ring(
                corners.stream().map(c -> new Vector2D(-c.getX(), c.getY())).toList());
    }

    /** Without corners at which it runs straight on: where a cut begins in the middle of a side there is one. */
    Ring plain(double withinMm) {
        List<Vector2D> left = new ArrayList<>();
        for (int i = 0; i < size(); i++) {
            if (distance(corner(i), corner(i - 1), corner(i + 1)) > withinMm) {
                left.add(corner(i));
            }
        }
        return left.size() < 3 ? this : new Ring(left);
    }

    /**
     * How far apart two outlines are, corner by corner, wherever they begin and whichever way they run.
     *
     * @return infinity if they have different numbers of corners
     */
    double distance(Ring other) {
        return Math.min(turned(other), turned(other.reversed()));
    }

    Ring reversed() {
        List<Vector2D> back = new ArrayList<>(corners);
        Collections.reverse(back);
        return new Ring(back);
    }

    /** How far a corner of one lies from the line of the other, whatever corners stand on straight sides. */
    double beside(Ring other) {
        return Math.max(cornersBeside(other), other.cornersBeside(this));
    }

    private double cornersBeside(Ring other) {
        double most = 0;
        for (Vector2D corner : corners) {
            double least = Double.POSITIVE_INFINITY;
            for (int i = 0; i < other.size(); i++) {
                least = Math.min(least, distance(corner, other.corner(i), other.corner(i + 1)));
            }
            most = Math.max(most, least);
        }
        return most;
    }

    private double turned(Ring other) {
        if (other.size() != size()) {
            return Double.POSITIVE_INFINITY;
        }
        double best = Double.POSITIVE_INFINITY;
        for (int turn = 0; turn < size(); turn++) {
            best = Math.min(best, apart(other, turn, best));
        }
        return best;
    }

    private double apart(Ring other, int turn, double enough) {
        double most = 0;
        for (int i = 0; i < size() && most < enough; i++) {
            most = Math.max(most, corner(i).distance(other.corner(i + turn)));
        }
        return most;
    }

    static double distance(Vector2D point, Vector2D from, Vector2D to) {
        Vector2D side = to.subtract(from);
        double along = side.getNormSq() == 0 ? 0 : point.subtract(from).dotProduct(side) / side.getNormSq();
        return point.distance(from.add(Math.max(0, Math.min(1, along)), side));
    }
}
