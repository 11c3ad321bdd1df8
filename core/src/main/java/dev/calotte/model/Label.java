package dev.calotte.model;

import dev.calotte.drawing.StrokeText;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * A text engraved on a part.
 *
 * @param text what is written
 * @param middle where its middle lies
 * @param turnRad the direction in which it is read
 * @param heightMm how high its capitals are
 */
record Label(String text, Vector2D middle, double turnRad, double heightMm) {

    /** After ISO 3098: the height of letters where there is room for it. */
    static final double USUAL_MM = 2.5;

    /** What can just be read. */
    static final double LEAST_MM = 2;

    /** What stays free around letters, in their heights. */
    private static final double AIR = 0.3;

    /** A label as high as usual, or as a box of that length and height has room for. */
    static Label fitted(String text, Vector2D middle, double turnRad, Vector2D box) {
        double wide = box.getX() / (StrokeText.width(text, 1) + 2 * AIR);
        double high = box.getY() / (1 + 2 * AIR);
        return new Label(text, middle, turnRad, Math.min(USUAL_MM, Math.min(wide, high)));
    }

    /** A level label as high as usual, or as a circle has room for. */
    static Label within(String text, Vector2D middle, double radius) {
        double width = StrokeText.width(text, 1);
        double reach = Math.sqrt(1 + width * width) / 2;
        return new Label(text, middle, 0, Math.min(USUAL_MM, Math.max(0.1, radius / reach)));
    }

    /** Whether it cannot be read without a glass. */
    boolean isSmall() {
        return heightMm < LEAST_MM - 1e-9;
    }

    StrokeText strokes() {
        return StrokeText.of(text, heightMm);
    }
}
