package dev.calotte.contour;

import dev.calotte.document.Drawing;
import dev.calotte.document.Drawing.Part;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import java.util.ArrayList;
import java.util.List;

/** Drawings made by hand, and what can be measured of them. */
final class Outlines {

    private Outlines() {}

    static Polyline outer(double... xy) {
        return Polyline.closed(Operation.CUT_OUTER, xy);
    }

    /** A part for each shape, marked A, B, C and so on. */
    static Drawing drawing(Shape... shapes) {
        List<Part> parts = new ArrayList<>();
        for (Shape shape : shapes) {
            parts.add(new Part(String.valueOf((char) ('A' + parts.size())), "", List.of(shape)));
        }
        return new Drawing("sheets/x-01", "A sheet", 1000, 1000, parts);
    }

    static List<Polyline> paths(Drawing drawing) {
        return drawing.parts().stream()
                .flatMap(part -> part.shapes().stream())
                .filter(Polyline.class::isInstance)
                .map(Polyline.class::cast)
                .toList();
    }

    /** How long all paths are together. */
    static double length(Drawing drawing) {
        return paths(drawing).stream().mapToDouble(Outlines::length).sum();
    }

    private static double length(Polyline path) {
        double length = 0;
        for (int i = 0; i < (path.isClosed() ? path.size() : path.size() - 1); i++) {
            int next = (i + 1) % path.size();
            double chord = StrictMath.hypot(path.x(next) - path.x(i), path.y(next) - path.y(i));
            length += path.arc(i)
                    .map(arc -> arc.radiusMm() * Math.abs(arc.sweepRad()))
                    .orElse(chord);
        }
        return length;
    }

    static List<Double> xy(Polyline path) {
        List<Double> xy = new ArrayList<>();
        for (int i = 0; i < path.size(); i++) {
            xy.add(path.x(i));
            xy.add(path.y(i));
        }
        return xy;
    }
}
