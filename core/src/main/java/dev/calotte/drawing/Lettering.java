package dev.calotte.drawing;

import dev.calotte.assembly.PieceLabels.Label;
import dev.calotte.document.Drawing.Part;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import dev.calotte.geometry.ConvexPolygon;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * Writes labels on a piece where there is room for them: inside its outlines with a margin, clear of its holes, of what
 * else is drawn on it and of one another. A label is written where it is wanted, or as near to that as can be, or
 * smaller; what has no room in the smallest letters is left out and listed.
 */
final class Lettering {

    /** After ISO 3098, the smallest letters of a drawing. */
    static final double LEAST_MM = 2.5;

    static final double MARGIN_MM = 2;
    private static final int LINES = 3;
    private static final double SMALLER = 0.8;

    /** How far labels may move, in heights of their letters, and in what steps. */
    private static final double STEP = 0.75;

    private static final int FAR = 12;
    private static final int NEAR = 4;

    private static final List<Vector2D> AROUND = shifts(-FAR, FAR, 1);
    private static final List<Vector2D> BESIDE = shifts(0, NEAR, 3);

    /**
     * Where labels may be.
     *
     * @param inside convex outlines that they have to stay inside of
     * @param walls shapes that they have to keep clear of, besides those of the piece
     * @param holds whether a place is one of the piece's, for pieces that are not convex
     */
    record Room(List<ConvexPolygon> inside, List<Shape> walls, Predicate<Vector2D> holds) {}

    private final List<ConvexPolygon> inside;
    private final Predicate<Vector2D> holds;
    private final List<Patch> taken = new ArrayList<>();
    private final List<Shape> strokes = new ArrayList<>();
    private final List<String> leftOut = new ArrayList<>();

    private Lettering(Room room, List<Shape> shapes) {
        this.inside = room.inside;
        this.holds = room.holds;
        Stream<Shape> within = shapes.stream().filter(shape -> shape.operation().compareTo(Operation.CUT_INNER) <= 0);
        Stream.concat(within, room.walls.stream()).forEach(shape -> taken.addAll(Patch.of(shape)));
    }

    /**
     * Writes on a piece.
     *
     * @param bare the piece without labels
     * @param inside the outlines that they have to stay inside of
     * @param labels three lines that stay together, then one for each side that is written along
     * @return the same piece with its labels, its description telling what is left out
     */
    static Part on(Part bare, List<ConvexPolygon> inside, List<Label> labels) {
        return on(bare, new Room(inside, List.of(), place -> true), labels);
    }

    /**
     * Writes on a piece that is not convex.
     *
     * @param bare the piece without labels
     * @param room where labels may be
     * @param labels three lines that stay together, then one for each side that is written along
     * @return the same piece with its labels, its description telling what is left out
     */
    static Part on(Part bare, Room room, List<Label> labels) {
        Lettering lettering = new Lettering(room, bare.shapes());
        lettering.write(labels.subList(0, LINES), AROUND);
        labels.subList(LINES, labels.size()).forEach(label -> lettering.write(List.of(label), BESIDE));
        lettering.strokes.addAll(bare.shapes());
        return new Part(bare.mark(), bare.description() + lettering.leftOut(), lettering.strokes);
    }

    /** Steps along the line and up from it, the nearest first; those upwards count so many times as far. */
    private static List<Vector2D> shifts(int lowest, int highest, double upwards) {
        return IntStream.rangeClosed(-FAR, FAR)
                .boxed()
                .flatMap(along -> IntStream.rangeClosed(lowest, highest).mapToObj(up -> new Vector2D(along, up)))
                .sorted(Comparator.comparingDouble(
                        shift -> new Vector2D(shift.getX(), upwards * shift.getY()).getNormSq()))
                .map(shift -> shift.scalarMultiply(STEP))
                .toList();
    }

    private String leftOut() {
        return leftOut.isEmpty() ? "" : ", without room for " + String.join(", ", leftOut);
    }

    /** Writes lines below one another; if there is no room for all, the last are left out first. */
    private void write(List<Label> lines, List<Vector2D> shifts) {
        int written = lines.size();
        Optional<List<Line>> found = Optional.empty();
        while (written > 0 && found.isEmpty()) {
            found = placed(about(middle(lines), lines.subList(0, written)), shifts);
            written -= found.isPresent() ? 0 : 1;
        }
        found.ifPresent(these -> these.forEach(line -> {
            strokes.addAll(line.paths());
            taken.add(line.patch);
        }));
        lines.subList(written, lines.size()).forEach(line -> leftOut.add(line.text()));
    }

    private Optional<List<Line>> placed(List<Label> lines, List<Vector2D> shifts) {
        double height = Math.max(lines.get(0).heightMm(), LEAST_MM);
        Optional<List<Line>> found = placed(lines, shifts, height);
        while (found.isEmpty() && height > LEAST_MM) {
            height = Math.max(SMALLER * height, LEAST_MM);
            found = placed(lines, shifts, height);
        }
        return found;
    }

    private Optional<List<Line>> placed(List<Label> lines, List<Vector2D> shifts, double height) {
        Vector2D middle = middle(lines);
        List<Line> wanted = lines.stream()
                .map(line -> Line.of(line, height, middle.add(height / line.heightMm(), at(line).subtract(middle))))
                .toList();
        if (wanted.stream().anyMatch(this::isTooLong)) {
            return Optional.empty();
        }
        return shifts.stream()
                .map(shift -> wanted.stream().map(line -> line.moved(shift)).toList())
                .filter(moved -> moved.stream().allMatch(this::hasRoom))
                .findFirst();
    }

    private static Vector2D middle(List<Label> lines) {
        return lines.stream()
                .map(Lettering::at)
                .reduce(Vector2D.ZERO, Vector2D::add)
                .scalarMultiply(1.0 / lines.size());
    }

    /** The same lines with their middle elsewhere. */
    private static List<Label> about(Vector2D middle, List<Label> lines) {
        Vector2D by = middle.subtract(middle(lines));
        return lines.stream()
                .map(line -> new Label(
                        line.text(), line.xMm() + by.getX(), line.yMm() + by.getY(), line.turnRad(), line.heightMm()))
                .toList();
    }

    private static Vector2D at(Label label) {
        return new Vector2D(label.xMm(), label.yMm());
    }

    private boolean isTooLong(Line line) {
        return inside.stream()
                .anyMatch(outline -> line.text.widthMm() + 2 * MARGIN_MM > outline.extent(line.patch.axis()));
    }

    private boolean hasRoom(Line line) {
        return holds.test(line.patch.middle())
                && inside.stream().allMatch(outline -> line.patch.isInside(outline, MARGIN_MM))
                && taken.stream().allMatch(other -> line.patch.isClearOf(other, MARGIN_MM));
    }

    /** A text at a place: the left end of its base line, the direction in which it is read, and what it takes up. */
    private record Line(StrokeText text, Vector2D begin, double turnRad, Patch patch) {

        static Line of(Label label, double height, Vector2D middle) {
            StrokeText text = StrokeText.of(label.text(), height);
            Vector2D along = new Vector2D(StrictMath.cos(label.turnRad()), StrictMath.sin(label.turnRad()));
            Vector2D up = new Vector2D(-along.getY(), along.getX());
            Vector2D begin = middle.subtract(text.widthMm() / 2, along).subtract(height / 2, up);
            Vector2D lowest = begin.subtract(text.dropMm(), up);
            return new Line(
                    text,
                    begin,
                    label.turnRad(),
                    Patch.box(lowest, along, text.widthMm(), text.dropMm() + text.riseMm()));
        }

        /** Moved along and up by heights of its letters. */
        Line moved(Vector2D shift) {
            Vector2D along = patch.axis();
            Vector2D by = new Vector2D(
                            shift.getX() * along.getX() - shift.getY() * along.getY(),
                            shift.getX() * along.getY() + shift.getY() * along.getX())
                    .scalarMultiply(text.heightMm());
            return new Line(text, begin.add(by), turnRad, patch.moved(by));
        }

        List<Polyline> paths() {
            return text.left(begin.getX(), begin.getY(), turnRad);
        }
    }
}
