package dev.calotte.check;

import dev.calotte.document.Circle;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/** What a file shows, sorted by what is done along it. */
final class SeenDrawing {

    private final List<Shape> shapes;

    SeenDrawing(List<? extends Shape> shapes) {
        this.shapes = List.copyOf(shapes);
    }

    private List<Polyline> paths(Predicate<Polyline> which) {
        List<Polyline> paths = new ArrayList<>();
        for (Shape shape : shapes) {
            if (shape instanceof Polyline path && which.test(path)) {
                paths.add(path);
            }
        }
        return paths;
    }

    /** The closed outlines of one operation, without corners where they run straight on. */
    List<Ring> outlines(Operation operation, double withinMm) {
        return paths(path -> path.operation() == operation && path.isClosed()).stream()
                .map(path -> Ring.of(path).plain(withinMm))
                .toList();
    }

    List<Polyline> openCuts() {
        return paths(path -> isCut(path) && !path.isClosed());
    }

    static boolean isCut(Shape shape) {
        return shape.operation() == Operation.CUT_OUTER || shape.operation() == Operation.CUT_INNER;
    }

    List<Shape> cuts() {
        return shapes.stream().filter(SeenDrawing::isCut).toList();
    }

    List<Circle> drilled() {
        List<Circle> circles = new ArrayList<>();
        for (Shape shape : shapes) {
            if (shape instanceof Circle circle && circle.operation() == Operation.DRILL) {
                circles.add(circle);
            }
        }
        return circles;
    }

    /** The sides of all outer cuts, open or closed: from and to of each. */
    List<Vector2D[]> sides() {
        List<Vector2D[]> sides = new ArrayList<>();
        for (Polyline path : paths(path -> path.operation() == Operation.CUT_OUTER)) {
            int count = path.isClosed() ? path.size() : path.size() - 1;
            for (int i = 0; i < count; i++) {
                int next = (i + 1) % path.size();
                sides.add(
                        new Vector2D[] {new Vector2D(path.x(i), path.y(i)), new Vector2D(path.x(next), path.y(next))});
            }
        }
        return sides;
    }

    /** How long the line is that says that it is 100 mm long: of open lines to measure by the longest. */
    OptionalDouble reference() {
        return references().stream().mapToDouble(SeenDrawing::length).max();
    }

    /** The left end of that line. */
    Optional<Vector2D> referenceBegin() {
        return references().stream()
                .max(Comparator.comparingDouble(SeenDrawing::length))
                .map(path -> path.x(0) <= path.x(1)
                        ? new Vector2D(path.x(0), path.y(0))
                        : new Vector2D(path.x(1), path.y(1)));
    }

    private List<Polyline> references() {
        return paths(path -> path.operation() == Operation.REF && !path.isClosed() && path.size() == 2);
    }

    private static double length(Polyline path) {
        return StrictMath.hypot(path.x(1) - path.x(0), path.y(1) - path.y(0));
    }
}
