package dev.calotte.drawing;

import dev.calotte.document.Picture.Weight;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/** The arrow that shows where counting begins, as a north arrow does on a map. */
final class StartArrow {

    static final double LENGTH = 8;

    private static final double BARB = 2.2;

    private StartArrow() {}

    /** Draws an arrow with its name beyond the tip. */
    static void add(Paper paper, Vector2D from, Vector2D direction) {
        Vector2D tip = from.add(LENGTH, direction);
        Vector2D side = new Vector2D(-direction.getY(), direction.getX());
        line(paper, from, tip);
        line(paper, tip, tip.add(-BARB, direction).add(BARB / 2, side));
        line(paper, tip, tip.add(-BARB, direction).add(-BARB / 2, side));
        Box name = Letters.capitals("start ray", Letters.SMALL);
        double reach = Math.abs(direction.getX()) * name.width() / 2 + Math.abs(direction.getY()) * name.height() / 2;
        Vector2D at = tip.add(reach + 1.5, direction);
        paper.add(Letters.middle("start ray", at.getX(), at.getY(), Letters.SMALL));
    }

    private static void line(Paper paper, Vector2D from, Vector2D to) {
        paper.line(from.getX(), from.getY(), to.getX(), to.getY(), Weight.STRONG);
    }
}
