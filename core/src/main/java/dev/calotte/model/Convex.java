package dev.calotte.model;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/** A convex polygon of a net, made to be compared with many others. */
final class Convex {

    /** So far two may reach into each other by rounding. */
    private static final double ROUNDING_MM = 1e-6;

    private final double[] x;
    private final double[] y;
    private final double midX;
    private final double midY;
    private final double radius;

    Convex(List<Vector2D> corners) {
        this.x = corners.stream().mapToDouble(Vector2D::getX).toArray();
        this.y = corners.stream().mapToDouble(Vector2D::getY).toArray();
        double sumX = 0;
        double sumY = 0;
        for (int c = 0; c < x.length; c++) {
            sumX += x[c];
            sumY += y[c];
        }
        this.midX = sumX / x.length;
        this.midY = sumY / x.length;
        double most = 0;
        for (int c = 0; c < x.length; c++) {
            most = Math.max(most, squared(x[c] - midX, y[c] - midY));
        }
        this.radius = Math.sqrt(most);
    }

    private static double squared(double x, double y) {
        return x * x + y * y;
    }

    /**
     * Whether two are nearer than they may be: those that have a corner in common may touch, others stay apart. Two convex
     * polygons are apart if and only if a line along a side of one of them separates them.
     */
    boolean collidesWith(Convex other, double apartMm) {
        double near = radius + other.radius + apartMm;
        if (squared(midX - other.midX, midY - other.midY) > near * near) {
            return false;
        }
        double least = sharesCornerWith(other) ? -ROUNDING_MM : apartMm;
        return Math.max(apartBySide(other), other.apartBySide(this)) < least;
    }

    private boolean sharesCornerWith(Convex other) {
        for (int c = 0; c < x.length; c++) {
            for (int d = 0; d < other.x.length; d++) {
                if (squared(x[c] - other.x[d], y[c] - other.y[d]) < ROUNDING_MM * ROUNDING_MM) {
                    return true;
                }
            }
        }
        return false;
    }

    /** How far the other lies outside the side that it is furthest from; below 0 if it lies inside all of them. */
    private double apartBySide(Convex other) {
        double most = Double.NEGATIVE_INFINITY;
        for (int c = 0; c < x.length; c++) {
            int next = c + 1 == x.length ? 0 : c + 1;
            double length = Math.sqrt(squared(x[next] - x[c], y[next] - y[c]));
            double outX = (y[next] - y[c]) / length;
            double outY = (x[c] - x[next]) / length;
            double nearest = Double.POSITIVE_INFINITY;
            for (int d = 0; d < other.x.length; d++) {
                nearest = Math.min(nearest, (other.x[d] - x[c]) * outX + (other.y[d] - y[c]) * outY);
            }
            most = Math.max(most, nearest);
        }
        return most;
    }
}
