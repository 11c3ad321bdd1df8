package dev.calotte.svg;

import dev.calotte.document.Picture.Facet;
import dev.calotte.document.Picture.Hatch;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Lines over the colour of a facet. Slanting ones are what the picture asks for; level and upright ones tell apart
 * colours that come again. They are lines of one grid over the whole page, cut off at the facet's sides: a pattern to
 * fill with would be short to write, but printers' files hold it as an image, of megabytes a page.
 *
 * @param colour the number of the colour
 * @param hatch the slanting lines
 */
record Hatching(int colour, Hatch hatch) {

    /** From line to line, along the page's axes. */
    private static final double GRID_MM = 3;

    /** Lines shorter than this are left out. */
    private static final double SHORTEST_MM = 0.1;

    private static final double STROKE_MM = 0.13;

    /** The lines ax + by = offset + GRID k. */
    private record Direction(double a, double b, double offset) {

        static final Direction RISING = new Direction(1, -1, 0);
        static final Direction FALLING = new Direction(1, 1, 0);
        static final Direction LEVEL = new Direction(0, 1, GRID_MM / 2);
        static final Direction UPRIGHT = new Direction(1, 0, GRID_MM / 2);

        double level(double x, double y) {
            return a * x + b * y - offset;
        }

        double along(double[] at) {
            return b * at[0] - a * at[1];
        }
    }

    static Hatching of(Facet facet) {
        return new Hatching(facet.colour(), facet.hatch());
    }

    boolean isVisible() {
        return !directions().isEmpty();
    }

    String colourOfLines() {
        return Palette.shade(colour);
    }

    double widthMm() {
        return STROKE_MM;
    }

    private List<Direction> directions() {
        Stream<Direction> slanting = switch (hatch) {
            case NONE -> Stream.of();
            case RISING -> Stream.of(Direction.RISING);
            case FALLING -> Stream.of(Direction.FALLING);
            case CROSSED -> Stream.of(Direction.RISING, Direction.FALLING);
        };
        Stream<Direction> straight = switch (Palette.round(colour)) {
            case 0 -> Stream.of();
            case 1 -> Stream.of(Direction.LEVEL);
            case 2 -> Stream.of(Direction.UPRIGHT);
            default -> Stream.of(Direction.LEVEL, Direction.UPRIGHT);
        };
        return Stream.concat(slanting, straight).toList();
    }

    /** The path of the lines inside an outline of x and y in turn; empty if no line crosses it. */
    String lines(List<Double> xy, double pageHeightMm) {
        double[] corners = xy.stream().mapToDouble(Double::doubleValue).toArray();
        PathText path = new PathText(pageHeightMm);
        directions().forEach(direction -> add(path, direction, corners));
        return path.toString();
    }

    private static void add(PathText path, Direction direction, double[] corners) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < corners.length; i += 2) {
            double level = direction.level(corners[i], corners[i + 1]);
            least = Math.min(least, level);
            most = Math.max(most, level);
        }
        for (double level = GRID_MM * Math.ceil(least / GRID_MM); level < most; level += GRID_MM) {
            List<double[]> ends = crossings(direction, level, corners);
            for (int i = 0; i + 1 < ends.size(); i += 2) {
                if (direction.along(ends.get(i + 1)) - direction.along(ends.get(i)) > SHORTEST_MM) {
                    path.move(ends.get(i)[0], ends.get(i)[1]).line(ends.get(i + 1)[0], ends.get(i + 1)[1]);
                }
            }
        }
    }

    /** Where a line crosses the outline, in order along it; a side owns its lower end only, so that they come in pairs. */
    private static List<double[]> crossings(Direction direction, double level, double[] corners) {
        List<double[]> found = new ArrayList<>();
        for (int i = 0; i < corners.length; i += 2) {
            int next = (i + 2) % corners.length;
            double from = direction.level(corners[i], corners[i + 1]);
            double to = direction.level(corners[next], corners[next + 1]);
            if (from <= level != to <= level) {
                double part = (level - from) / (to - from);
                found.add(new double[] {
                    corners[i] + part * (corners[next] - corners[i]),
                    corners[i + 1] + part * (corners[next + 1] - corners[i + 1])
                });
            }
        }
        found.sort((a, b) -> Double.compare(direction.along(a), direction.along(b)));
        return found;
    }
}
