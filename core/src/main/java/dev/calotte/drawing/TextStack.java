package dev.calotte.drawing;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/** A few words under each other, the first as large as a mark, the others small. */
final class TextStack {

    private static final double LINE = 4.2;
    private static final double CLEAR = 1.2;

    private TextStack() {}

    static void around(Paper paper, List<String> lines, Vector2D middle) {
        double top = middle.getY() + height(lines) / 2;
        for (int i = 0; i < lines.size(); i++) {
            double y = i == 0 ? top - Letters.MARK / 2 : top - Letters.MARK - LINE * i + Letters.SMALL / 2;
            paper.add(Letters.middle(lines.get(i), middle.getX(), y, size(i)));
        }
    }

    /** Beyond a point, seen along a direction. */
    static void beyond(Paper paper, List<String> lines, Vector2D point, Vector2D out) {
        double reach = (Math.abs(out.getX()) * width(lines) + Math.abs(out.getY()) * height(lines)) / 2;
        around(paper, lines, point.add(CLEAR + reach, out));
    }

    private static double size(int line) {
        return line == 0 ? Letters.MARK : Letters.SMALL;
    }

    static double width(List<String> lines) {
        double widest = 0;
        for (int i = 0; i < lines.size(); i++) {
            widest = Math.max(widest, Letters.widthMm(lines.get(i), size(i)));
        }
        return widest;
    }

    static double height(List<String> lines) {
        return Letters.MARK + (lines.size() - 1) * LINE;
    }
}
