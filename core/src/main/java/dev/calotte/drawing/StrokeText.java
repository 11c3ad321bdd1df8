package dev.calotte.drawing;

import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.drawing.StrokeAlphabet.Glyph;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * A line of text that a machine engraves: open chains of straight strokes, each drawn once, in an alphabet of its own.
 *
 * <p>For example {@code StrokeText.of("P4L-3.07", 7).middle(200, 80, 0)}.
 *
 * @param text what is written
 * @param heightMm how high its capitals are; what hangs below the base line adds a third of that
 */
public record StrokeText(String text, double heightMm) {

    /**
     * Checks that everything can be written.
     *
     * @param text what is written
     * @param heightMm how high its capitals are
     * @throws IllegalArgumentException if the alphabet lacks a character, which is named, or the height is not above 0
     */
    public StrokeText {
        text.codePoints().forEach(StrokeAlphabet::glyph);
        if (!(heightMm > 0) || heightMm == Double.POSITIVE_INFINITY) {
            throw new IllegalArgumentException("letters cannot be " + heightMm + " mm high");
        }
    }

    /**
     * A line of text.
     *
     * @param text what is written
     * @param heightMm how high its capitals are
     * @return the text
     * @throws IllegalArgumentException if the alphabet lacks a character, which is named, or the height is not above 0
     */
    public static StrokeText of(String text, double heightMm) {
        return new StrokeText(text, heightMm);
    }

    /**
     * How long a line of text is.
     *
     * @param text what is written
     * @param heightMm how high its capitals are
     * @return its length in millimetres
     * @throws IllegalArgumentException if the alphabet lacks a character, which is named, or the height is not above 0
     */
    public static double width(String text, double heightMm) {
        return of(text, heightMm).widthMm();
    }

    /**
     * How long it is.
     *
     * @return from the first letter's left edge to the last one's right edge; 0 without letters
     */
    public double widthMm() {
        double width = text.codePoints()
                .mapToDouble(letter -> StrokeAlphabet.glyph(letter).width() + StrokeAlphabet.GAP)
                .sum();
        return Math.max(0, width - StrokeAlphabet.GAP) * scale();
    }

    /** How far its strokes hang below the base line. */
    double dropMm() {
        return reach(place -> -place.getY());
    }

    /** How far its strokes rise above the base line. */
    double riseMm() {
        return reach(Vector2D::getY);
    }

    private double reach(ToDoubleFunction<Vector2D> height) {
        return scale()
                * text.codePoints()
                        .boxed()
                        .flatMap(letter -> StrokeAlphabet.glyph(letter).strokes().stream())
                        .flatMap(List::stream)
                        .mapToDouble(height)
                        .reduce(0, Math::max);
    }

    /**
     * Its strokes, written with the middle of the line, half a capital above the base line, at a place.
     *
     * @param xMm where the middle is
     * @param yMm where the middle is
     * @param turnRad the direction in which it is read, from x counter-clockwise
     * @return open paths to engrave, in the order of writing
     */
    public List<Polyline> middle(double xMm, double yMm, double turnRad) {
        return strokes(new Vector2D(xMm, yMm), turnRad, new Vector2D(-widthMm() / 2, -heightMm / 2));
    }

    /**
     * Its strokes, written with the left end of the base line at a place.
     *
     * @param xMm where it begins
     * @param yMm where its base line begins
     * @param turnRad the direction in which it is read, from x counter-clockwise
     * @return open paths to engrave, in the order of writing
     */
    public List<Polyline> left(double xMm, double yMm, double turnRad) {
        return strokes(new Vector2D(xMm, yMm), turnRad, Vector2D.ZERO);
    }

    private double scale() {
        return heightMm / StrokeAlphabet.CAPITAL;
    }

    /** Strokes of a line that begins at a place of its own frame, when that frame is turned and its origin lies there. */
    private List<Polyline> strokes(Vector2D origin, double turnRad, Vector2D begin) {
        Pose pose = new Pose(false, StrictMath.cos(turnRad), StrictMath.sin(turnRad), origin);
        List<Polyline> paths = new ArrayList<>();
        Vector2D at = begin;
        for (int letter : text.codePoints().toArray()) {
            Glyph glyph = StrokeAlphabet.glyph(letter);
            for (List<Vector2D> stroke : glyph.strokes()) {
                Vector2D from = at;
                paths.add(Polyline.open(
                        Operation.ENGRAVE,
                        pose.xy(stroke.stream()
                                .map(place -> from.add(scale(), place))
                                .toList())));
            }
            at = at.add(scale() * (glyph.width() + StrokeAlphabet.GAP), new Vector2D(1, 0));
        }
        return List.copyOf(paths);
    }
}
