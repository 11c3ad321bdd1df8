package dev.calotte.check;

import dev.calotte.check.ExpectedDrawing.Cut;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/** Gives each piece the outline that is drawn for it, and says what is left over on either side. */
final class OutlineMatch {

    private final List<Cut> cuts;
    private final List<Ring> left;
    private final ExpectedDrawing expected;
    private final Findings findings;

    OutlineMatch(List<Cut> cuts, List<Ring> seen, ExpectedDrawing expected, Findings findings) {
        this.cuts = cuts;
        this.left = new ArrayList<>(seen);
        this.expected = expected;
        this.findings = findings;
    }

    void check() {
        List<Cut> missed = new ArrayList<>();
        for (Cut cut : cuts) {
            Ring outline = cut.outline().plain(expected.withinMm());
            if (!take(ring -> lies(outline, ring))) {
                missed.add(cut);
            }
        }
        missed.forEach(this::elsewhere);
        left.forEach(this::tooMuch);
    }

    private boolean take(Predicate<Ring> which) {
        for (int i = 0; i < left.size(); i++) {
            if (which.test(left.get(i))) {
                left.remove(i);
                return true;
            }
        }
        return false;
    }

    /** Whether an outline is where it should be; alone on a drawing it may be anywhere. */
    private boolean lies(Ring outline, Ring ring) {
        Ring there = expected.border().isPresent() ? ring : at(ring, outline);
        return there.middle().distance(outline.middle()) <= 2 * expected.withinMm()
                && there.distance(outline) <= 2 * expected.withinMm();
    }

    private static Ring at(Ring ring, Ring outline) {
        return ring.shifted(outline.least().subtract(ring.least()));
    }

    private void elsewhere(Cut cut) {
        Ring outline = cut.outline().plain(expected.withinMm());
        Vector2D middle = outline.middle();
        for (Ring ring : List.copyOf(left)) {
            if (alike(sides(outline, false), sides(ring, false))) {
                left.remove(ring);
                findings.add(
                        Fault.MOVED,
                        cut.mark(),
                        "its outline lies " + Findings.text(ring.middle().distance(middle))
                                + " mm from its place, or is turned.");
                return;
            }
        }
        for (Ring ring : List.copyOf(left)) {
            if (alike(sides(outline, false), sides(ring, true))) {
                left.remove(ring);
                findings.add(Fault.MIRRORED, cut.mark(), "its outline is the mirror image of what it should be.");
                return;
            }
        }
        boolean near = take(ring -> ring.middle().distance(middle) < outline.length() / 8
                || expected.border().isEmpty());
        findings.add(
                near ? Fault.DIFFERENT : Fault.MISSING,
                cut.mark(),
                near ? "its outline is not that of the record." : "it has no outline.");
    }

    private void tooMuch(Ring ring) {
        String at = "x " + Findings.text(ring.middle().getX()) + ", y "
                + Findings.text(ring.middle().getY());
        for (Cut cut : cuts) {
            if (alike(sides(cut.outline().plain(expected.withinMm()), false), sides(ring, false))) {
                findings.add(Fault.DOUBLED, at, "an outline like that of " + cut.mark() + " is there once more.");
                return;
            }
        }
        findings.add(Fault.FOREIGN, at, "an outline is cut there that belongs to no piece.");
    }

    /** The lengths of the sides, counter-clockwise, or clockwise. */
    private static List<Double> sides(Ring ring, boolean clockwise) {
        Ring way = ring.area() < 0 == clockwise ? ring : ring.reversed();
        List<Double> sides = new ArrayList<>();
        for (int i = 0; i < way.size(); i++) {
            sides.add(way.corner(i).distance(way.corner(i + 1)));
        }
        return sides;
    }

    private boolean alike(List<Double> one, List<Double> other) {
        boolean alike = false;
        for (int turn = 0; one.size() == other.size() && !alike && turn < one.size(); turn++) {
            alike = alike(one, other, turn);
        }
        return alike;
    }

    private boolean alike(List<Double> one, List<Double> other, int turn) {
        for (int i = 0; i < one.size(); i++) {
            if (Math.abs(one.get(i) - other.get((i + turn) % other.size())) > 4 * expected.withinMm()) {
                return false;
            }
        }
        return true;
    }
}
