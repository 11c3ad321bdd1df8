package dev.calotte.svg.paper;

import dev.calotte.document.Arc;
import dev.calotte.document.Circle;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import java.util.stream.DoubleStream;

/** Shapes as chains of straight lines, no further than a hundredth of a millimetre from the shape. */
final class Flattening {

    private static final double ERROR_MM = 0.01;

    /** Four of them bound a circle whatever its size. */
    private static final double QUARTER_RAD = Math.PI / 2;

    /** A hole of the smallest drill still looks round. */
    private static final double WIDEST_RAD = Math.PI / 6;

    private Flattening() {}

    /** The points of a shape; an outline comes back to its first one. */
    static double[] chain(Shape shape) {
        return shape instanceof Circle circle ? chain(circle) : chain((Polyline) shape);
    }

    private static double[] chain(Circle circle) {
        double right = circle.xMm() + circle.radiusMm();
        DoubleStream.Builder chain = DoubleStream.builder().add(right).add(circle.yMm());
        for (int quarter = 0; quarter < 4; quarter++) {
            Arc arc = new Arc(circle.xMm(), circle.yMm(), circle.radiusMm(), quarter * QUARTER_RAD, QUARTER_RAD);
            addInside(chain, arc);
            if (quarter < 3) {
                double end = (quarter + 1) * QUARTER_RAD;
                chain.add(arc.x(end)).add(arc.y(end));
            }
        }
        return chain.add(right).add(circle.yMm()).build().toArray();
    }

    private static double[] chain(Polyline path) {
        DoubleStream.Builder chain = DoubleStream.builder();
        int points = path.size() + (path.isClosed() ? 1 : 0);
        for (int i = 0; i < points; i++) {
            int corner = i % path.size();
            if (i > 0) {
                path.arc(i - 1).ifPresent(arc -> addInside(chain, arc));
            }
            chain.add(path.x(corner)).add(path.y(corner));
        }
        return chain.build().toArray();
    }

    /** The points of an arc between its ends. A side of the angle 2a stays within r (1 - cos a) of it. */
    private static void addInside(DoubleStream.Builder chain, Arc arc) {
        double half = StrictMath.acos(Math.max(0, 1 - ERROR_MM / arc.radiusMm()));
        int sides = (int) Math.ceil(Math.abs(arc.sweepRad()) / Math.min(2 * half, WIDEST_RAD));
        for (int i = 1; i < sides; i++) {
            double angle = arc.startRad() + arc.sweepRad() * i / sides;
            chain.add(arc.x(angle)).add(arc.y(angle));
        }
    }
}
