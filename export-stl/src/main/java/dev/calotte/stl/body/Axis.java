package dev.calotte.stl.body;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/**
 * A direction in plan from a point: places are told by how far they lie out along it and to its left.
 *
 * @param x where it begins, in millimetres
 * @param y where it begins
 * @param cos the cosine of where it points
 * @param sin the sine of where it points
 */
record Axis(double x, double y, double cos, double sin) {

    private static final GeometryFactory PLANE = new GeometryFactory();

    /** From the origin. */
    static Axis towards(double angleRad) {
        return from(0, 0, angleRad);
    }

    /** From any point. */
    static Axis from(double x, double y, double angleRad) {
        return new Axis(x, y, StrictMath.cos(angleRad), StrictMath.sin(angleRad));
    }

    /** The same direction from a point further out and to the left. */
    Axis moved(double out, double left) {
        Coordinate there = place(out, left);
        return new Axis(there.x, there.y, cos, sin);
    }

    /** Turned to the left. */
    Axis turned(double byRad) {
        double c = StrictMath.cos(byRad);
        double s = StrictMath.sin(byRad);
        return new Axis(x, y, cos * c - sin * s, sin * c + cos * s);
    }

    /** A place. */
    Coordinate place(double out, double left) {
        return new Coordinate(x + out * cos - left * sin, y + out * sin + left * cos);
    }

    /** An area whose corners lie out and to the left, alternately; counter-clockwise. */
    Polygon area(double... outAndLeft) {
        Coordinate[] ring = new Coordinate[outAndLeft.length / 2 + 1];
        for (int i = 0; i + 1 < ring.length; i++) {
            ring[i] = place(outAndLeft[2 * i], outAndLeft[2 * i + 1]);
        }
        ring[ring.length - 1] = ring[0].copy();
        return PLANE.createPolygon(ring);
    }

    /** A rectangle along the axis. */
    Polygon box(double from, double to, double right, double left) {
        return area(from, right, to, right, to, left, from, left);
    }

    /** A circle as a polygon of so many corners that touches it from outside, so that what is round fits through. */
    Polygon disc(double radiusMm, int corners) {
        double[] ring = new double[2 * corners];
        double outer = radiusMm / StrictMath.cos(Math.PI / corners);
        for (int i = 0; i < corners; i++) {
            double angle = 2 * Math.PI * (i + 0.5) / corners;
            ring[2 * i] = outer * StrictMath.cos(angle);
            ring[2 * i + 1] = outer * StrictMath.sin(angle);
        }
        return area(ring);
    }

    /** A plane by its height where the axis begins, and how it rises along the axis and to its left. */
    Plane slope(double heightMm, double out, double left) {
        double byX = out * cos - left * sin;
        double byY = out * sin + left * cos;
        return new Plane(byX, byY, heightMm - byX * x - byY * y);
    }
}
