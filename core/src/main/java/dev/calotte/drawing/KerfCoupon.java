package dev.calotte.drawing;

import dev.calotte.document.Drawing;
import dev.calotte.document.Drawing.Part;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import dev.calotte.units.NumberText;
import java.util.ArrayList;
import java.util.List;

/**
 * A piece to find the kerf by: a comb of slots, a tongue that is pushed into them, and a square to be measured, each with
 * its finished size engraved. It is cut with the kerf of everything else. If that is right, the tongue of 3 mm fits the
 * slot of 3 mm and the square measures 20 mm.
 *
 * <p>Were the true kerf larger by {@code e}, the tongue would lack {@code e} and each slot have {@code e} too much; so the
 * slot {@code w} that the tongue fits says that the kerf is too large by half of {@code w - 3}.
 */
public final class KerfCoupon {

    private static final double MARGIN = 10;
    private static final double TONGUE = 3;
    private static final double STEP = 0.05;
    private static final int STEPS = 4;
    private static final double PITCH = 11;
    private static final double DEPTH = 12;
    private static final double COMB_HEIGHT = 24;
    private static final double SQUARE = 20;
    private static final double LETTERS = 2.5;
    private static final double BESIDE = 10;

    private KerfCoupon() {}

    /**
     * Draws the coupon.
     *
     * @return the document {@code kerf-coupon}, of finished sizes
     */
    public static Drawing drawing() {
        double below = 2 * MARGIN;
        double above = below + SQUARE + BESIDE;
        return new Drawing(
                "kerf-coupon",
                "Kerf test: sizes engraved are those of the finished pieces",
                combWidth() + 2 * MARGIN,
                above + COMB_HEIGHT + MARGIN,
                List.of(
                        comb(MARGIN, above),
                        square(MARGIN, below),
                        tongue(MARGIN + SQUARE + BESIDE, below),
                        Reference.at(MARGIN)));
    }

    private static double combWidth() {
        return (2 * STEPS + 1) * PITCH;
    }

    /** Slots open to the top, each with its width below it; as an outline counter-clockwise they come from right to left. */
    private static Part comb(double x, double y) {
        List<Shape> shapes = new ArrayList<>();
        List<Double> xy = new ArrayList<>(List.of(x, y, x + combWidth(), y, x + combWidth(), y + COMB_HEIGHT));
        double top = y + COMB_HEIGHT;
        for (int step = STEPS; step >= -STEPS; step--) {
            double middle = x + (step + STEPS + 0.5) * PITCH;
            double width = TONGUE + step * STEP;
            double right = middle + width / 2;
            double left = middle - width / 2;
            xy.addAll(List.of(right, top, right, top - DEPTH, left, top - DEPTH, left, top));
            shapes.addAll(size(width, middle, y + (COMB_HEIGHT - DEPTH) / 2));
        }
        xy.addAll(List.of(x, top));
        shapes.add(Polyline.closed(
                Operation.CUT_OUTER,
                xy.stream().mapToDouble(Double::doubleValue).toArray()));
        return new Part(
                "COMB",
                "Slots; the tongue fits one of them: the kerf is too large by half of what that is"
                        + " wider than 3 mm",
                shapes);
    }

    private static Part square(double x, double y) {
        List<Shape> shapes = new ArrayList<>(size(SQUARE, x + SQUARE / 2, y + SQUARE / 2));
        shapes.add(Polyline.closed(Operation.CUT_OUTER, x, y, x + SQUARE, y, x + SQUARE, y + SQUARE, x, y + SQUARE));
        return new Part("SQUARE", "Measure it: the kerf is too large by what it measures over 20 mm", shapes);
    }

    /** A handle, and to the right of it the tongue. */
    private static Part tongue(double x, double y) {
        double middle = y + SQUARE / 2;
        double low = middle - TONGUE / 2;
        double high = middle + TONGUE / 2;
        double handle = x + SQUARE;
        double end = handle + DEPTH + PITCH;
        List<Shape> shapes = new ArrayList<>(size(TONGUE, x + SQUARE / 2, middle));
        shapes.add(Polyline.closed(Operation.CUT_OUTER, new double[] {
            x, y, handle, y, handle, low, end, low, end, high, handle, high, handle, y + SQUARE, x, y + SQUARE
        }));
        return new Part("TONGUE", "Push it into the slots of the comb", shapes);
    }

    private static List<Polyline> size(double sizeMm, double x, double y) {
        return StrokeText.of(NumberText.fixed(sizeMm, 2), LETTERS).middle(x, y, 0);
    }
}
