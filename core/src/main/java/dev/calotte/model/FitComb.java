package dev.calotte.model;

import dev.calotte.document.Drawing;
import dev.calotte.document.Drawing.Part;
import dev.calotte.drawing.Pose;
import dev.calotte.geometry.Polygon;
import dev.calotte.units.NumberText;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * A comb to find the fit with before a kit is cut: slots that are wider than the board by what stands below each of them,
 * in steps of 0.05 mm. The slot that takes a piece of the board as one likes it gives the {@code fit} of the brief.
 *
 * @param board what it is cut from
 */
record FitComb(Board board) {

    private static final double STEP = 0.05;
    private static final int TIGHTEST = -3;
    private static final int LOOSEST = 6;
    private static final double MARGIN = 5;
    private static final double DEPTH = 8;
    private static final double BASE = 7;
    private static final double TOOTH = 8;

    Drawing drawing(double scale) {
        ModelPart comb = comb();
        Kerf kerf = new Kerf(board.kerfMm());
        Vector2D shift = new Vector2D(MARGIN, MARGIN);
        return new Drawing(
                "model/fit-comb",
                "Fit comb for the model 1:" + NumberText.trimmed(scale, 3) + ", board of "
                        + NumberText.trimmed(board.thicknessMm(), 3) + " mm, " + kerf.note(),
                comb.outline().reach(new Vector2D(1, 0)) + 2 * MARGIN,
                comb.outline().reach(new Vector2D(0, 1)) + 2 * MARGIN,
                List.of(new Part(
                        comb.mark(),
                        comb.description(),
                        SheetDrawings.of(1000, 1000, board).shapes(comb, Pose.shifted(shift)))));
    }

    /** Slots from left to right, from the tightest that the cutter leaves open to the loosest. */
    ModelPart comb() {
        List<Vector2D> top = new ArrayList<>();
        List<Label> labels = new ArrayList<>();
        double x = TOOTH;
        for (int step = TIGHTEST; step <= LOOSEST; step++) {
            double wide = board.thicknessMm() + step * STEP;
            if (wide <= board.kerfMm()) {
                continue;
            }
            labels.add(new Label(text(step), new Vector2D(x + wide / 2, BASE / 2), 0, Label.USUAL_MM));
            top.add(new Vector2D(x, BASE + DEPTH));
            top.add(new Vector2D(x, BASE));
            top.add(new Vector2D(x + wide, BASE));
            top.add(new Vector2D(x + wide, BASE + DEPTH));
            x += wide + TOOTH;
        }
        return new ModelPart("COMB", "Slots for one thickness of the board", outline(top, x), List.of(), labels, 1);
    }

    private static String text(int step) {
        return (step > 0 ? "+" : "") + NumberText.fixed(step * STEP, 2);
    }

    private static Polygon outline(List<Vector2D> leftToRight, double length) {
        List<Vector2D> corners =
                new ArrayList<>(List.of(Vector2D.ZERO, new Vector2D(length, 0), new Vector2D(length, BASE + DEPTH)));
        for (int c = leftToRight.size() - 1; c >= 0; c--) {
            corners.add(leftToRight.get(c));
        }
        corners.add(new Vector2D(0, BASE + DEPTH));
        return Polygon.of(corners);
    }
}
