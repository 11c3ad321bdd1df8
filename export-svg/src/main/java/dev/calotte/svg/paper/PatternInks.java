package dev.calotte.svg.paper;

import dev.calotte.document.Circle;
import dev.calotte.document.Drawing;
import dev.calotte.document.Operation;
import dev.calotte.document.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The lines of a drawing as they are drawn on paper: by operation, with the centres of holes to drill at. */
final class PatternInks {

    private static final double CENTRE_MM = 1.5;

    private final List<Shape> shapes;

    private PatternInks(List<Shape> shapes) {
        this.shapes = shapes;
    }

    /** Without borders of stock, and without parts to measure by: every page has rulers of its own. */
    static List<Ink> of(Drawing drawing) {
        return new PatternInks(parts(drawing).stream()
                        .flatMap(part -> part.shapes().stream())
                        .toList())
                .inks();
    }

    /** The parts that are made. */
    static List<Drawing.Part> parts(Drawing drawing) {
        return drawing.parts().stream()
                .filter(part -> part.shapes().stream().anyMatch(shape -> shape.operation() != Operation.REF))
                .toList();
    }

    private List<Ink> inks() {
        List<Ink> inks = new ArrayList<>();
        for (Operation operation : Operation.values()) {
            pen(operation).ifPresent(pen -> add(operation.name(), pen, chains(operation), inks));
        }
        add("CENTRES", Pen.FINE, centres(), inks);
        return inks;
    }

    private static void add(String id, Pen pen, List<double[]> chains, List<Ink> inks) {
        if (!chains.isEmpty()) {
            inks.add(new Ink(id, pen, chains));
        }
    }

    private static Optional<Pen> pen(Operation operation) {
        return switch (operation) {
            case CUT_OUTER, CUT_INNER -> Optional.of(Pen.CUT);
            case DRILL, ENGRAVE -> Optional.of(Pen.FINE);
            case SCORE -> Optional.of(Pen.FOLD);
            case REF -> Optional.of(Pen.NET);
            case SHEET -> Optional.empty();
        };
    }

    private List<double[]> chains(Operation operation) {
        return shapes.stream()
                .filter(shape -> shape.operation() == operation)
                .map(Flattening::chain)
                .toList();
    }

    private List<double[]> centres() {
        List<double[]> centres = new ArrayList<>();
        for (Shape shape : shapes) {
            if (shape instanceof Circle hole && hole.operation() == Operation.DRILL) {
                double arm = hole.radiusMm() + CENTRE_MM;
                centres.addAll(Cross.at(hole.xMm(), hole.yMm(), arm));
            }
        }
        return centres;
    }
}
