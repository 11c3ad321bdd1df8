package dev.calotte.contour;

import dev.calotte.document.Drawing;
import dev.calotte.document.Drawing.Part;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;

/**
 * How a tool follows the lines of a drawing. The same choices hold for every format.
 *
 * <pre>{@code
 * Contours milled = new Contours(
 *         Contours.Start.EDGE, OptionalDouble.of(0.05), Contours.SharedEdges.EACH, Contours.Closing.FLAG);
 * Finish finish = Finish.PLAIN.withContours(milled);
 * }</pre>
 *
 * @param start where the cut of an outline begins
 * @param flattenMm how far chords may lie from the arcs that they stand for; arcs stay arcs if absent
 * @param sharedEdges what becomes of an edge along which two pieces lie
 * @param closing how a file says that an outline is closed, where its format knows more than one way
 */
public record Contours(Start start, OptionalDouble flattenMm, SharedEdges sharedEdges, Closing closing) {

    /** Outlines begin at a corner, arcs stay arcs, every outline is cut whole and closed by its flag. */
    public static final Contours PLAIN =
            new Contours(Start.CORNER, OptionalDouble.empty(), SharedEdges.EACH, Closing.FLAG);

    /** The finest chords that are worth a machine's while. */
    public static final double LEAST_FLATTEN_MM = 0.001;

    /** Where the cut of an outline begins and ends. */
    public enum Start {
        /** At its first corner. */
        CORNER,
        /** In the middle of its longest straight side, which has one more corner there: a router leaves its mark on it. */
        EDGE
    }

    /** What becomes of an edge along which two pieces lie. */
    public enum SharedEdges {
        /** Each piece is a closed outline; a drawing in which two cuts lie on each other is refused. */
        EACH,
        /**
         * It is cut once, with the piece that comes first; of the others what is left is an open line. For lasers only:
         * there is no inside by which a router could offset its tool.
         */
        ONCE
    }

    /** How a file says that an outline is closed. */
    public enum Closing {
        /** By a flag; no corner is repeated. */
        FLAG,
        /** By its first corner, which comes again at the end of an open line: for readers that pass over the flag. */
        CORNER
    }

    /**
     * Checks the choices.
     *
     * @param start where the cut of an outline begins
     * @param flattenMm at least {@link #LEAST_FLATTEN_MM} if present
     * @param sharedEdges what becomes of an edge along which two pieces lie
     * @param closing how a file says that an outline is closed
     * @throws IllegalArgumentException if chords are to be finer, or open lines are to begin at an edge
     */
    public Contours {
        if (flattenMm.isPresent() && !(flattenMm.getAsDouble() >= LEAST_FLATTEN_MM)) {
            throw new IllegalArgumentException("no arc is flattened within " + flattenMm.getAsDouble() + " mm");
        }
        if (start == Start.EDGE && sharedEdges == SharedEdges.ONCE) {
            throw new IllegalArgumentException(
                    "an outline cannot begin at an edge where shared edges are cut once: it is not closed");
        }
    }

    /**
     * The same with another start of outlines.
     *
     * @param place where the cut of an outline begins
     * @return a copy
     */
    public Contours withStart(Start place) {
        return new Contours(place, flattenMm, sharedEdges, closing);
    }

    /**
     * The same with chords for arcs.
     *
     * @param toleranceMm how far they may lie from their arcs
     * @return a copy
     */
    public Contours withFlatten(double toleranceMm) {
        return new Contours(start, OptionalDouble.of(toleranceMm), sharedEdges, closing);
    }

    /**
     * The same with another treatment of shared edges.
     *
     * @param manner what becomes of an edge along which two pieces lie
     * @return a copy
     */
    public Contours withSharedEdges(SharedEdges manner) {
        return new Contours(start, flattenMm, manner, closing);
    }

    /**
     * The same with outlines that are closed in another way.
     *
     * @param way how a file says that an outline is closed
     * @return a copy
     */
    public Contours withClosing(Closing way) {
        return new Contours(start, flattenMm, sharedEdges, way);
    }

    /**
     * A drawing as a tool follows it.
     *
     * @param drawing what is drawn
     * @return the same with its lines changed, and with a title that says so where edges are cut once
     * @throws IllegalArgumentException if two cuts lie on each other, wholly or in part
     */
    public Drawing of(Drawing drawing) {
        Drawing followed = drawing;
        if (sharedEdges == SharedEdges.ONCE) {
            followed = new CommonLines(drawing).drawing();
        }
        Optional<DoubleCuts> twice = DoubleCuts.in(followed);
        if (twice.isPresent()) {
            throw new IllegalArgumentException(
                    drawing.name() + ": " + twice.get().text());
        }
        if (flattenMm.isPresent()) {
            double tolerance = flattenMm.getAsDouble();
            followed = eachPath(followed, path -> Flattening.of(path, tolerance));
        }
        return start == Start.EDGE ? eachPath(followed, EdgeStart::of) : followed;
    }

    private static Drawing eachPath(Drawing drawing, UnaryOperator<Polyline> change) {
        return new Drawing(
                drawing.name(),
                drawing.title(),
                drawing.widthMm(),
                drawing.heightMm(),
                drawing.parts().stream()
                        .map(part -> new Part(
                                part.mark(),
                                part.description(),
                                part.shapes().stream()
                                        .map(shape -> changed(shape, change))
                                        .toList()))
                        .toList());
    }

    private static Shape changed(Shape shape, UnaryOperator<Polyline> change) {
        return shape instanceof Polyline path ? change.apply(path) : shape;
    }
}
