package dev.calotte.drawing;

import dev.calotte.document.Picture.Anchor;
import dev.calotte.document.Picture.Weight;
import dev.calotte.units.UnitSystem;

/**
 * A line that is as long as its text says at the drawing's scale, at the bottom of a page.
 *
 * @param paper the page
 * @param strip the room that is kept for it
 * @param units whose round lengths it takes
 */
record ScaleBar(Paper paper, Box strip, UnitSystem units) {

    private static final double HEIGHT = 9;
    private static final double LONGEST = 60;
    private static final double FOOT = 304.8;
    private static final double TICK = 1.2;

    static ScaleBar on(Paper paper, UnitSystem units) {
        return new ScaleBar(paper, paper.strip(HEIGHT), units);
    }

    /**
     * Draws the bar.
     *
     * @param scale the drawing's scale
     * @param where which lengths it holds for, as words to follow, may be empty
     */
    void draw(DrawnScale scale, String where) {
        double length = longest(scale, units == UnitSystem.METRIC ? 1 : FOOT);
        double left = strip.left();
        double right = left + scale.onPaper(length);
        double y = strip.middleY();
        paper.line(left, y, right, y, Weight.STRONG);
        paper.line(left, y - TICK, left, y + TICK, Weight.STRONG);
        paper.line(right, y - TICK, right, y + TICK, Weight.STRONG);
        paper.text(text(length) + where, right + 2, y, Letters.SMALL, Anchor.START);
    }

    /** One, two or five with zeros, of a unit; the largest that is not too long on paper. */
    private static double longest(DrawnScale scale, double unitMm) {
        double most = LONGEST * scale.ratio() / unitMm;
        double length = 1e-3;
        while (10 * length <= most) {
            length *= 10;
        }
        return unitMm * length * (5 * length <= most ? 5 : 2 * length <= most ? 2 : 1);
    }

    private String text(double lengthMm) {
        if (units == UnitSystem.METRIC && lengthMm >= 1000) {
            return Math.round(lengthMm / 1000) + " m";
        }
        return units.length(lengthMm, lengthMm < 1 ? 3 : 0);
    }
}
