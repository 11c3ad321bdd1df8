package dev.calotte.svg.paper;

import dev.calotte.document.Circle;
import dev.calotte.document.Path;
import dev.calotte.document.Shape;

/** Shapes as chains of straight lines, no further than a hundredth of a millimetre from the shape. */
final class Flattening {

    static final double ERROR_MM = 0.01;
    private static final int LEAST_SIDES = 12;

    private Flattening() {}

    /** The points of a shape; an outline comes back to its first one. */
    static double[] chain(Shape shape) {
        if (shape instanceof Circle circle) {
            return chain(circle);
        }
        Path path = (Path) shape;
        int points = path.size() + (path.isClosed() ? 1 : 0);
        double[] chain = new double[2 * points];
        for (int i = 0; i < points; i++) {
            chain[2 * i] = path.x(i % path.size());
            chain[2 * i + 1] = path.y(i % path.size());
        }
        return chain;
    }

    private static double[] chain(Circle circle) {
        int sides = sides(circle.radiusMm());
        double[] chain = new double[2 * sides + 2];
        for (int i = 0; i <= sides; i++) {
            double rad = 2 * Math.PI * (i % sides) / sides;
            chain[2 * i] = circle.xMm() + circle.radiusMm() * StrictMath.cos(rad);
            chain[2 * i + 1] = circle.yMm() + circle.radiusMm() * StrictMath.sin(rad);
        }
        return chain;
    }

    /** A side of the angle 2a stays within r (1 - cos a) of its arc; by fours, so that a circle keeps its width. */
    private static int sides(double radiusMm) {
        double half = StrictMath.acos(Math.max(0, 1 - ERROR_MM / radiusMm));
        return Math.max(LEAST_SIDES, 4 * (int) Math.ceil(Math.PI / half / 4));
    }
}
