package dev.calotte.contour;

import dev.calotte.document.Drawing;
import dev.calotte.units.NumberText;
import java.util.Optional;

/**
 * What would be cut twice: straight sides of outlines that lie on each other, wholly or in part, and arcs and circles
 * that do. Lines that only cross, or meet in a point, are none.
 *
 * <pre>{@code
 * Drawing sheet = CoverSheets.of(plan, UnitSystem.METRIC).get(0);
 * Optional<String> twice = DoubleCuts.in(sheet).map(DoubleCuts::text);
 * }</pre>
 *
 * @param drawing the name of the drawing
 * @param count how many pairs of sides there are
 * @param one the mark of a piece
 * @param other the mark of a piece that lies against it, perhaps the same
 * @param xMm a corner of the first such edge, or the centre of an arc
 * @param yMm a corner of the first such edge, or the centre of an arc
 */
public record DoubleCuts(String drawing, int count, String one, String other, double xMm, double yMm) {

    /**
     * Looks a drawing through.
     *
     * @param drawing a drawing
     * @return what would be cut twice; empty if nothing is
     */
    public static Optional<DoubleCuts> in(Drawing drawing) {
        CutSides sides = new CutSides(CutPaths.of(drawing).crowded());
        First first = new First();
        new SideSweep(sides).each(first::add);
        if (first.count > 0) {
            Side side = sides.side(first.one);
            return Optional.of(new DoubleCuts(
                    drawing.name(),
                    first.count,
                    sides.markOf(first.one),
                    sides.markOf(first.other),
                    side.fromX(),
                    side.fromY()));
        }
        return RoundCuts.in(drawing);
    }

    /**
     * In words.
     *
     * @return for example {@code 3 edges would be cut twice, the first between P1-1.01 and P1-1.02 at x 120.5 mm, y 80 mm}
     */
    public String text() {
        return (count == 1 ? "an edge would be cut twice, " : count + " edges would be cut twice, the first ")
                + "between "
                + one + " and " + other + " at x " + NumberText.trimmed(xMm, 1) + " mm, y "
                + NumberText.trimmed(yMm, 1) + " mm";
    }

    /** The first pair in the order of cutting, whatever the order in which they are found. */
    private static final class First {

        private int count;
        private int one;
        private int other;

        void add(int earlier, int later) {
            if (count == 0 || earlier < one || (earlier == one && later < other)) {
                one = earlier;
                other = later;
            }
            count++;
        }
    }
}
