package dev.calotte.drawing;

import dev.calotte.drawing.StrokeAlphabet.Glyph;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * A letter as it lies on the grid.
 *
 * @param letter its code point
 * @param width how wide it is
 * @param sides u and v of both ends of each of its sides, in the order of writing
 */
record GridLetter(int letter, double width, List<double[]> sides) {

    /** All that leave strokes, those with the most sides first, so that an R is not taken for a P. */
    static final List<GridLetter> ALL = StrokeAlphabet.letters().stream()
            .map(GridLetter::of)
            .filter(letter -> !letter.sides().isEmpty())
            .sorted(Comparator.comparingInt(letter -> -letter.sides().size()))
            .toList();

    private static GridLetter of(int letter) {
        Glyph glyph = StrokeAlphabet.glyph(letter);
        List<double[]> sides = new ArrayList<>();
        for (List<Vector2D> stroke : glyph.strokes()) {
            for (int i = 1; i < stroke.size(); i++) {
                Vector2D from = stroke.get(i - 1);
                Vector2D to = stroke.get(i);
                sides.add(new double[] {from.getX(), from.getY(), to.getX(), to.getY()});
            }
        }
        return new GridLetter(letter, glyph.width(), List.copyOf(sides));
    }

    /** No part of it is farther from its origin. */
    double reach() {
        return width + StrokeAlphabet.CAPITAL;
    }

    String text() {
        return Character.toString(letter);
    }
}
