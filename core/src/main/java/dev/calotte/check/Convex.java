package dev.calotte.check;

import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/** How convex outlines lie to each other, and to a border that need not be convex. */
final class Convex {

    private Convex() {}

    /** How far one would have to be moved to lie beside the other; 0 or less if they lie apart or touch. */
    static double overlap(Ring one, Ring other) {
        return Math.min(overlapAcross(one, other), overlapAcross(other, one));
    }

    /** Along the directions out of the sides of the first. */
    private static double overlapAcross(Ring one, Ring other) {
        double least = Double.POSITIVE_INFINITY;
        double turn = Math.signum(one.area());
        for (int i = 0; i < one.size(); i++) {
            Vector2D side = one.corner(i + 1).subtract(one.corner(i));
            if (side.getNorm() > 0) {
                Vector2D out = new Vector2D(side.getY(), -side.getX()).scalarMultiply(turn / side.getNorm());
                double line = out.dotProduct(one.corner(i));
                double nearest = other.corners().stream()
                        .mapToDouble(out::dotProduct)
                        .min()
                        .orElseThrow();
                least = Math.min(least, line - nearest);
            }
        }
        return least;
    }

    /** The distance of two that do not overlap. */
    static double distance(Ring one, Ring other) {
        return Math.min(fromCorners(one, other), fromCorners(other, one));
    }

    private static double fromCorners(Ring one, Ring other) {
        double least = Double.POSITIVE_INFINITY;
        for (Vector2D corner : one.corners()) {
            for (int i = 0; i < other.size(); i++) {
                least = Math.min(least, Ring.distance(corner, other.corner(i), other.corner(i + 1)));
            }
        }
        return least;
    }

    /** How far the corner of a part that lies furthest outside a border is away from it. */
    static double beyond(Ring part, Ring border) {
        double most = 0;
        for (Vector2D corner : part.corners()) {
            if (!inside(corner, border)) {
                double off = Double.POSITIVE_INFINITY;
                for (int i = 0; i < border.size(); i++) {
                    off = Math.min(off, Ring.distance(corner, border.corner(i), border.corner(i + 1)));
                }
                most = Math.max(most, off);
            }
        }
        for (Vector2D hollow : border.corners()) {
            if (inside(hollow, part)) {
                most = Math.max(most, depth(hollow, part));
            }
        }
        return most;
    }

    private static double depth(Vector2D point, Ring part) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < part.size(); i++) {
            least = Math.min(least, Ring.distance(point, part.corner(i), part.corner(i + 1)));
        }
        return least;
    }

    /** Counts the sides that a ray to the right crosses. */
    static boolean inside(Vector2D point, Ring ring) {
        boolean inside = false;
        for (int i = 0; i < ring.size(); i++) {
            Vector2D a = ring.corner(i);
            Vector2D b = ring.corner(i + 1);
            boolean crosses = a.getY() > point.getY() != b.getY() > point.getY();
            if (crosses) {
                double x = a.getX() + (point.getY() - a.getY()) / (b.getY() - a.getY()) * (b.getX() - a.getX());
                inside ^= point.getX() < x;
            }
        }
        return inside;
    }
}
