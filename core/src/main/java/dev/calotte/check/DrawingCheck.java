package dev.calotte.check;

import dev.calotte.check.ExpectedDrawing.Cut;
import dev.calotte.check.RecordedCover.Hole;
import dev.calotte.contour.DoubleCuts;
import dev.calotte.document.Circle;
import dev.calotte.document.Drawing;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/** Compares what a file shows with what the record says that it shows. */
public final class DrawingCheck {

    /** Of the reference line. */
    private static final double REFERENCE_MM = 100;

    /** What is larger or smaller by less than this is not called scaled, but different. */
    private static final double SAME_SCALE = 1e-5;

    private final ExpectedDrawing expected;
    private final List<Cut> cuts;
    private final SeenDrawing seen;
    private final Findings findings;

    private DrawingCheck(ExpectedDrawing expected, List<Shape> shapes, Findings findings) {
        this.expected = expected;
        this.cuts = expected.led();
        this.seen = new SeenDrawing(shapes);
        this.findings = findings;
    }

    /**
     * Compares a drawing of pieces: every outline at its place, once, on the stock, and every hole; nothing cut twice.
     *
     * @param expected what should be shown
     * @param shapes what is shown
     * @param findings takes what is wrong
     */
    public static void of(ExpectedDrawing expected, List<Shape> shapes, Findings findings) {
        new DrawingCheck(expected, shapes, findings).check();
    }

    /**
     * Looks at a drawing of which the record holds no outlines: that its reference line is 100 mm long, and that nothing is
     * cut twice.
     *
     * @param shapes what is shown
     * @param findings takes what is wrong
     */
    public static void alone(List<Shape> shapes, Findings findings) {
        SeenDrawing seen = new SeenDrawing(shapes);
        isScaled(seen.reference(), findings);
        twice(seen, findings);
    }

    /**
     * Asks that the line of 100 mm, from which all of a drawing is laid out, begins where it should.
     *
     * @param shapes what is shown; nothing is asked if it has no such line
     * @param marginMm how far it begins from the left border and from the lower one
     * @param withinMm how exact the file is
     * @param findings takes what is wrong
     */
    public static void origin(List<Shape> shapes, double marginMm, double withinMm, Findings findings) {
        Optional<Vector2D> begin = new SeenDrawing(shapes).referenceBegin();
        Vector2D should = new Vector2D(marginMm, marginMm);
        if (begin.isPresent() && !(begin.get().distance(should) <= withinMm)) {
            findings.add(
                    Fault.MOVED,
                    "",
                    "its reference of 100 mm begins at x "
                            + Findings.text(begin.get().getX()) + ", y "
                            + Findings.text(begin.get().getY()) + ", not at x " + Findings.text(marginMm) + ", y "
                            + Findings.text(marginMm) + ": all of it, or this line, lies elsewhere.");
        }
    }

    private void check() {
        if (isScaled(seen.reference(), findings) || isScaled()) {
            return;
        }
        if (expected.once()) {
            new SideCover(cuts, seen.sides(), expected.withinMm()).check(findings);
        } else {
            seen.openCuts()
                    .forEach(path ->
                            findings.add(Fault.DIFFERENT, at(path), "a line that is cut there does not close."));
            new OutlineMatch(cuts, outlines(Operation.CUT_OUTER), expected, findings).check();
        }
        border();
        boolean known = !expected.border().equals(Optional.of(ExpectedDrawing.EVERYWHERE));
        if (known && (expected.border().isPresent() || findings.list().isEmpty())) {
            holes();
        }
        twice(seen, findings);
    }

    private List<Ring> outlines(Operation operation) {
        return seen.outlines(operation, expected.withinMm());
    }

    private static String at(Polyline path) {
        return "x " + Findings.text(path.x(0)) + ", y " + Findings.text(path.y(0));
    }

    private static boolean isScaled(OptionalDouble reference, Findings findings) {
        double scale = reference.orElse(REFERENCE_MM) / REFERENCE_MM;
        if (Math.abs(scale - 1) > SAME_SCALE) {
            findings.add(
                    Fault.SCALED,
                    "",
                    "its reference of 100 mm is " + Findings.text(reference.getAsDouble()) + " mm long: the file is "
                            + Findings.text(scale) + " times its size.");
            return true;
        }
        return false;
    }

    /** Whether all sides of all outlines are longer, or shorter, by one factor. */
    private boolean isScaled() {
        List<Ring> seenOutlines = outlines(Operation.CUT_OUTER);
        double[] should = sides(cuts.stream()
                .map(cut -> cut.outline().plain(expected.withinMm()))
                .toList());
        double[] is = sides(seenOutlines);
        boolean scaled = should.length > 0 && should.length == is.length && seenOutlines.size() == cuts.size();
        double scale =
                scaled ? DoubleStream.of(is).sum() / DoubleStream.of(should).sum() : 1;
        scaled &= Math.abs(scale - 1) > SAME_SCALE;
        for (int i = 0; scaled && i < is.length; i++) {
            scaled = Math.abs(is[i] - scale * should[i]) < SAME_SCALE * is[i] + 4 * expected.withinMm();
        }
        if (scaled) {
            findings.add(Fault.SCALED, "", "the file is " + Findings.text(scale) + " times its size.");
        }
        return scaled;
    }

    /** How long the sides of some outlines are, rising. */
    private static double[] sides(List<Ring> outlines) {
        return outlines.stream()
                .flatMapToDouble(ring -> IntStream.range(0, ring.size())
                        .mapToDouble(i -> ring.corner(i).distance(ring.corner(i + 1))))
                .sorted()
                .toArray();
    }

    private void border() {
        if (expected.border().isEmpty() || expected.border().get().equals(ExpectedDrawing.EVERYWHERE)) {
            return;
        }
        Ring border = expected.border().get().plain(expected.withinMm());
        List<Ring> drawn = outlines(Operation.SHEET);
        if (drawn.size() != 1 || !(drawn.get(0).distance(border) <= expected.withinMm())) {
            findings.add(Fault.DIFFERENT, "SHEET", "the border of the stock is not that of the plan.");
        }
        for (Ring ring : outlines(Operation.CUT_OUTER)) {
            double beyond = Convex.beyond(ring, border) - expected.kerfMm() / 2;
            if (beyond > expected.withinMm()) {
                Vector2D at = ring.middle();
                findings.add(
                        Fault.OUTSIDE,
                        "x " + Findings.text(at.getX()) + ", y " + Findings.text(at.getY()),
                        "an outline reaches " + Findings.text(beyond) + " mm beyond the stock.");
            }
        }
    }

    private void holes() {
        List<Circle> left = new ArrayList<>(seen.drilled());
        Vector2D shift = shift();
        for (Cut cut : cuts) {
            for (Hole hole : cut.holes()) {
                Circle circle = ExpectedDrawing.circle(hole);
                if (!left.removeIf(other -> same(circle, shift, other))) {
                    findings.add(
                            Fault.MISSING,
                            cut.mark(),
                            "no hole of " + Findings.text(hole.diameter()) + " mm is drilled at x "
                                    + Findings.text(hole.x() + shift.getX()) + ", y "
                                    + Findings.text(hole.y() + shift.getY()) + ".");
                }
            }
        }
        for (Circle circle : left) {
            findings.add(
                    Fault.FOREIGN,
                    "x " + Findings.text(circle.xMm()) + ", y " + Findings.text(circle.yMm()),
                    "a hole is drilled that no piece has.");
        }
    }

    /** How far the only piece of a drawing without a border lies from the frame of its pattern. */
    private Vector2D shift() {
        List<Ring> outlines = outlines(Operation.CUT_OUTER);
        return expected.border().isPresent() || outlines.size() != 1 || cuts.size() != 1
                ? Vector2D.ZERO
                : outlines.get(0).least().subtract(cuts.get(0).outline().least());
    }

    private boolean same(Circle one, Vector2D shift, Circle other) {
        double within = 2 * expected.withinMm();
        return Math.abs(one.xMm() + shift.getX() - other.xMm()) <= within
                && Math.abs(one.yMm() + shift.getY() - other.yMm()) <= within
                && Math.abs(one.radiusMm() - other.radiusMm()) <= within;
    }

    private static void twice(SeenDrawing seen, Findings findings) {
        List<Drawing.Part> parts = new ArrayList<>();
        for (Shape shape : seen.cuts()) {
            parts.add(new Drawing.Part("outline " + (parts.size() + 1), "", List.of(shape)));
        }
        DoubleCuts.in(new Drawing(findings.file(), "", 0, 0, parts))
                .ifPresent(twice -> findings.add(Fault.DOUBLE_CUT, "", twice.text() + "."));
    }
}
