package dev.calotte.check;

import dev.calotte.document.Circle;
import dev.calotte.document.Drawing;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import java.util.List;
import java.util.function.UnaryOperator;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/** Shapes of drawings, as they are read and as they are moved. */
final class Shapes {

    private Shapes() {}

    static List<Shape> of(Drawing drawing) {
        return drawing.parts().stream().flatMap(part -> part.shapes().stream()).toList();
    }

    private static double[] xy(Polyline path, UnaryOperator<Vector2D> move) {
        double[] xy = new double[2 * path.size()];
        for (int i = 0; i < path.size(); i++) {
            Vector2D moved = move.apply(new Vector2D(path.x(i), path.y(i)));
            xy[2 * i] = moved.getX();
            xy[2 * i + 1] = moved.getY();
        }
        return xy;
    }

    static Shape moved(Shape shape, UnaryOperator<Vector2D> move) {
        if (shape instanceof Circle circle) {
            Vector2D at = move.apply(new Vector2D(circle.xMm(), circle.yMm()));
            return new Circle(circle.operation(), at.getX(), at.getY(), circle.radiusMm());
        }
        Polyline path = (Polyline) shape;
        return path.isClosed()
                ? Polyline.closed(path.operation(), xy(path, move))
                : Polyline.open(path.operation(), xy(path, move));
    }

    /** The place of the first shape of an operation. */
    static int first(List<Shape> shapes, Operation operation) {
        int at = 0;
        while (shapes.get(at).operation() != operation) {
            at++;
        }
        return at;
    }
}
