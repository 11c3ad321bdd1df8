package dev.calotte.drawing;

import dev.calotte.document.Drawing.Part;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A line of 100 mm with a tick at either end and its length above it, to measure a print or a cut by. */
final class Reference {

    static final double LENGTH = 100;

    /** How far it reaches below the line and above it. */
    static final double TICK = 2;

    static final double ABOVE = 7;

    private static final double LETTERS = 4;

    private Reference() {}

    /** The line, its left end so far from both borders of the sheet. */
    static Part at(double margin) {
        return at(margin, margin);
    }

    /** The line, its left end at a place. */
    static Part at(double x, double y) {
        double end = x + LENGTH;
        List<Shape> shapes = new ArrayList<>();
        shapes.add(Polyline.open(Operation.REF, x, y, end, y));
        shapes.add(Polyline.open(Operation.REF, x, y - TICK, x, y + TICK));
        shapes.add(Polyline.open(Operation.REF, end, y - TICK, end, y + TICK));
        for (Polyline stroke : new StrokeText("100 mm", LETTERS).middle(x + LENGTH / 2, y + ABOVE - LETTERS / 2, 0)) {
            shapes.add(onReference(stroke));
        }
        return new Part("REF-100", "Reference, 100 mm from tick to tick", shapes);
    }

    /** The line on a sheet, clear of what is cut if there is room; across it otherwise, since nothing is worked along it. */
    static Optional<Part> on(List<Part> parts, double lengthMm, double widthMm) {
        FreePlace free = new FreePlace(parts, LENGTH, TICK + ABOVE);
        return free.on(lengthMm, widthMm)
                .or(() -> new FreePlace(List.of(), LENGTH, TICK + ABOVE).on(lengthMm, widthMm))
                .map(corner -> at(corner.getX(), corner.getY() + TICK));
    }

    private static Polyline onReference(Polyline stroke) {
        double[] xy = new double[2 * stroke.size()];
        for (int i = 0; i < stroke.size(); i++) {
            xy[2 * i] = stroke.x(i);
            xy[2 * i + 1] = stroke.y(i);
        }
        return Polyline.open(Operation.REF, xy);
    }
}
