package dev.calotte.export;

import dev.calotte.contour.Inward;
import dev.calotte.document.Circle;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import java.io.IOException;
import java.util.List;

/**
 * The one outline that a file shows. What lies on layers that are named after scoring, engraving or reference is passed
 * over; of everything else there must be a single closed line, because whatever is left out would be cut through.
 */
public final class Border {

    /** How much of the material arcs may cost: less than any saw keeps to. */
    private static final double TOLERANCE_MM = 0.2;

    /** Where arcs stay and straight sides are for measuring only: less than anyone can measure on a plate. */
    private static final double MEASURING_MM = 0.01;

    private static final int MOST_CORNERS = 1000;

    private Border() {}

    /**
     * An outline with what is cut out of it.
     *
     * @param outline the largest line, counter-clockwise, with its arcs
     * @param holes the others, counter-clockwise too
     */
    public record Pierced(Polyline outline, List<Polyline> holes) {

        /**
         * Copies the list.
         *
         * @param outline the largest line
         * @param holes the others
         */
        public Pierced {
            holes = List.copyOf(holes);
        }
    }

    /**
     * Takes an outline with holes from the lines of a file. Whether the holes lie inside is not looked at.
     *
     * @param shapes the lines, in millimetres
     * @return the lines as they are
     * @throws IOException if a line is open, there is none, or they have more than a thousand corners; the message says why
     */
    public static Pierced withHoles(List<Shape> shapes) throws IOException {
        List<Polyline> lines = cut(shapes);
        Polyline outline = largest(lines);
        checkSize("the lines have ", lines.stream().mapToInt(Polyline::size).sum());
        return new Pierced(
                Inward.counterClockwise(outline),
                lines.stream()
                        .filter(line -> line != outline)
                        .map(Inward::counterClockwise)
                        .toList());
    }

    /**
     * Straight sides to measure by.
     *
     * @param line a closed line with arcs
     * @return the same without them, counter-clockwise, nowhere more than 0.01 mm further in
     */
    public static Polyline measurable(Polyline line) {
        return Inward.flattened(line, MEASURING_MM);
    }

    /**
     * Takes the outline from the lines of a file.
     *
     * @param shapes the lines, in millimetres
     * @return the outline, counter-clockwise, its arcs made straight on the safe side: no point of it lies outside the arcs,
     *     nor more than 0.2 mm inside them
     * @throws IOException if there is not one outline alone, or it has more than a thousand corners; the message says why
     */
    public static Polyline of(List<Shape> shapes) throws IOException {
        Polyline border = Inward.flattened(only(cut(shapes)), TOLERANCE_MM);
        checkSize("the outline has ", border.size());
        return border;
    }

    private static void checkSize(String what, int corners) throws IOException {
        if (corners > MOST_CORNERS) {
            throw new IOException(what + corners + " corners, which is more than " + MOST_CORNERS + ".");
        }
    }

    private static List<Polyline> cut(List<Shape> shapes) {
        return shapes.stream()
                .filter(shape -> isCut(shape.operation()))
                .map(Border::path)
                .toList();
    }

    private static boolean isCut(Operation operation) {
        return switch (operation) {
            case SCORE, ENGRAVE, REF -> false;
            default -> true;
        };
    }

    private static Polyline path(Shape shape) {
        if (shape instanceof Circle circle) {
            double x = circle.xMm();
            double y = circle.yMm();
            double r = circle.radiusMm();
            // three thirds of the round, each a sweep of 120 degrees
            double half = r * Math.sqrt(3) / 2;
            double bulge = StrictMath.tan(Math.PI / 6);
            double[] xy = {x + r, y, x - r / 2, y + half, x - r / 2, y - half};
            return Polyline.closed(circle.operation(), xy, new double[] {bulge, bulge, bulge});
        }
        return (Polyline) shape;
    }

    private static Polyline only(List<Polyline> lines) throws IOException {
        Polyline border = largest(lines);
        for (Polyline line : lines) {
            if (line != border) {
                throw new IOException(
                        holds(border, line)
                                ? "the outline has a hole, at " + place(line, 0) + ", which nothing can be laid round."
                                : "there is more than one outline, another at " + place(line, 0) + ".");
            }
        }
        return border;
    }

    private static Polyline largest(List<Polyline> lines) throws IOException {
        for (Polyline line : lines) {
            if (!line.isClosed()) {
                throw new IOException("a line that begins at " + place(line, 0) + " is open.");
            }
        }
        if (lines.isEmpty()) {
            throw new IOException("there is no outline in it.");
        }
        Polyline border = lines.get(0);
        for (Polyline line : lines) {
            border = reach(line) > reach(border) ? line : border;
        }
        return border;
    }

    private static String place(Polyline line, int corner) {
        return "(" + Math.round(line.x(corner)) + ", " + Math.round(line.y(corner)) + ") mm";
    }

    private static double reach(Polyline line) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (int c = 0; c < line.size(); c++) {
            least = Math.min(least, line.x(c));
            most = Math.max(most, line.x(c));
        }
        return most - least;
    }

    /** Whether the first corner of a line lies inside a border, arcs taken for straight: a ray to the right tells. */
    private static boolean holds(Polyline border, Polyline line) {
        double x = line.x(0);
        double y = line.y(0);
        boolean inside = false;
        for (int c = 0; c < border.size(); c++) {
            int d = (c + 1) % border.size();
            boolean crosses = border.y(c) > y != border.y(d) > y;
            double share = (y - border.y(c)) / (border.y(d) - border.y(c));
            inside ^= crosses && x < border.x(c) + share * (border.x(d) - border.x(c));
        }
        return inside;
    }
}
