package dev.calotte.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/** The marks in one patch: a number in each of its panels, and once, over one of the numbers, the mark of the patch. */
final class PatchMarks {

    /** Of both lines, so far apart that nothing which hangs from letters touches the line below. */
    private static final double HEIGHT = Letters.MARK + Letters.SMALL + 2;

    private final String mark;
    private final List<Numbered> panels = new ArrayList<>();

    PatchMarks(String mark) {
        this.mark = mark;
    }

    /** A panel as it is on paper. */
    private record Numbered(String number, List<Vector2D> corners) {

        Vector2D middle() {
            return MarkSpot.middle(corners);
        }

        /** Where the middle of the patch's mark and the number below it may be. */
        Optional<Vector2D> spot(String mark) {
            double width = Math.max(Letters.widthMm(mark, Letters.MARK), Letters.widthMm(number, Letters.SMALL));
            return MarkSpot.in(corners, Box.around(0, 0, width, HEIGHT));
        }
    }

    /** A panel by its place in the order of joining. */
    void add(int number, List<Vector2D> corners) {
        panels.add(new Numbered(Integer.toString(number), corners));
    }

    /** The patch is named where there is room, next to its middle; else beside the figure. */
    void draw(Paper paper, Leaders leaders) {
        Optional<Numbered> named = nearest(
                panels.stream().filter(panel -> panel.spot(mark).isPresent()).toList());
        for (Numbered panel : panels) {
            if (named.filter(panel::equals).isPresent()) {
                panel.spot(mark).ifPresent(at -> write(paper, panel.number, at));
            } else {
                leaders.mark(paper, panel.number, Letters.SMALL, panel.corners);
            }
        }
        if (named.isEmpty()) {
            nearest(panels).ifPresent(panel -> leaders.add(mark, panel.middle()));
        }
    }

    private void write(Paper paper, String number, Vector2D middle) {
        double top = middle.getY() + HEIGHT / 2 - Letters.MARK / 2;
        double below = middle.getY() - HEIGHT / 2 + Letters.SMALL / 2;
        paper.add(Letters.middle(mark, middle.getX(), top, Letters.MARK));
        paper.add(Letters.middle(number, middle.getX(), below, Letters.SMALL));
    }

    private Optional<Numbered> nearest(List<Numbered> some) {
        Vector2D middle = panels.stream()
                .map(Numbered::middle)
                .reduce(Vector2D.ZERO, Vector2D::add)
                .scalarMultiply(1.0 / Math.max(1, panels.size()));
        // equal distances differ in their last digits only, and must not decide
        return some.stream()
                .min(Comparator.comparingLong(
                        panel -> StrictMath.round(1000 * panel.middle().distance(middle))));
    }
}
