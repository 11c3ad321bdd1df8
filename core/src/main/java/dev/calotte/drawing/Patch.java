package dev.calotte.drawing;

import dev.calotte.document.Circle;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import dev.calotte.geometry.ConvexPolygon;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * What something takes up on a piece: a point, a line or a rectangle, and all round it as much as a radius.
 *
 * @param corners its corners
 * @param radius how far it reaches beyond them
 * @param axis of length 1, along one of its sides
 */
record Patch(List<Vector2D> corners, double radius, Vector2D axis) {

    private static final double NOWHERE = 1e-9;

    /** What a shape takes up: a circle as a whole, a path side by side; an arc by its chord and its height, which
     * is the most that it reaches from there. */
    static List<Patch> of(Shape shape) {
        if (shape instanceof Circle circle) {
            Vector2D centre = new Vector2D(circle.xMm(), circle.yMm());
            return List.of(new Patch(List.of(centre), circle.radiusMm(), new Vector2D(1, 0)));
        }
        Polyline path = (Polyline) shape;
        List<Patch> patches = new ArrayList<>();
        for (int corner = path.isClosed() ? 0 : 1; corner < path.size(); corner++) {
            int before = corner > 0 ? corner - 1 : path.size() - 1;
            patches.add(side(place(path, before), place(path, corner), path.bulge(before)));
        }
        return patches;
    }

    private static Vector2D place(Polyline path, int corner) {
        return new Vector2D(path.x(corner), path.y(corner));
    }

    private static Patch side(Vector2D from, Vector2D to, double bulge) {
        double length = from.distance(to);
        Vector2D along = length > NOWHERE ? to.subtract(from).scalarMultiply(1 / length) : new Vector2D(1, 0);
        return new Patch(List.of(from, to), Math.abs(bulge) * length / 2, along);
    }

    /** A rectangle by a corner, the direction of the side that begins there, and its sizes along and across that. */
    static Patch box(Vector2D corner, Vector2D along, double width, double height) {
        Vector2D next = corner.add(width, along);
        Vector2D up = across(along).scalarMultiply(height);
        return new Patch(List.of(corner, next, next.add(up), corner.add(up)), 0, along);
    }

    Vector2D middle() {
        return corners.stream().reduce(Vector2D.ZERO, Vector2D::add).scalarMultiply(1.0 / corners.size());
    }

    Patch moved(Vector2D shift) {
        return new Patch(corners.stream().map(corner -> corner.add(shift)).toList(), radius, axis);
    }

    /** Whether all of it lies at least so far inside an outline. */
    boolean isInside(ConvexPolygon outline, double margin) {
        for (int side = 0; side < outline.size(); side++) {
            Vector2D outward = outline.outward(side);
            double limit = outline.corner(side).dotProduct(outward) - margin - radius;
            for (Vector2D corner : corners) {
                if (corner.dotProduct(outward) > limit) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Whether a strip so wide, along a side of one of the two, lies between them; if so they are at least that far apart. */
    boolean isClearOf(Patch other, double margin) {
        return List.of(axis, across(axis), other.axis, across(other.axis)).stream()
                .anyMatch(direction -> gap(other, direction) >= margin || other.gap(this, direction) >= margin);
    }

    private double gap(Patch after, Vector2D direction) {
        return -after.reach(direction.negate()) - reach(direction);
    }

    private double reach(Vector2D direction) {
        double most = Double.NEGATIVE_INFINITY;
        for (Vector2D corner : corners) {
            most = Math.max(most, corner.dotProduct(direction));
        }
        return most + radius;
    }

    private static Vector2D across(Vector2D direction) {
        return new Vector2D(-direction.getY(), direction.getX());
    }
}
