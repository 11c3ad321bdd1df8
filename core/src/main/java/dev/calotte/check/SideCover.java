package dev.calotte.check;

import dev.calotte.check.ExpectedDrawing.Cut;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/** Where shared edges are cut once: every side of every piece lies on lines that are cut, and no line is cut beside them. */
final class SideCover {

    private final List<Side> should = new ArrayList<>();
    private final List<Side> seen = new ArrayList<>();
    private final double withinMm;

    private record Side(String mark, Vector2D from, Vector2D to) {

        double length() {
            return from.distance(to);
        }

        double along(Vector2D point) {
            return point.subtract(from).dotProduct(to.subtract(from)) / length();
        }

        double beside(Vector2D point) {
            return Math.abs(point.crossProduct(from, to)) / length();
        }
    }

    SideCover(List<Cut> cuts, List<Vector2D[]> sides, double withinMm) {
        // an edge that is cut with the neighbour lies where the neighbour has it: up to 0.001 mm away
        this.withinMm = withinMm + 0.001;
        for (Cut cut : cuts) {
            Ring outline = cut.outline();
            for (int i = 0; i < outline.size(); i++) {
                should.add(new Side(cut.mark(), outline.corner(i), outline.corner(i + 1)));
            }
        }
        sides.forEach(side -> seen.add(new Side("", side[0], side[1])));
    }

    void check(Findings findings) {
        for (Side side : should) {
            if (!isCovered(side, seen)) {
                findings.add(Fault.MISSING, side.mark, "a side of it" + at(side) + " is not cut, or is cut elsewhere.");
            }
        }
        for (Side side : seen) {
            if (!isCovered(side, should)) {
                findings.add(Fault.FOREIGN, "", "a line" + at(side) + " is cut that belongs to no piece.");
            }
        }
    }

    private static String at(Side side) {
        return " from x " + Findings.text(side.from.getX()) + ", y " + Findings.text(side.from.getY());
    }

    private boolean isCovered(Side side, List<Side> others) {
        List<double[]> spans = new ArrayList<>();
        for (Side other : others) {
            if (near(side, other) && inOneLine(side, other)) {
                double a = side.along(other.from);
                double b = side.along(other.to);
                spans.add(new double[] {Math.min(a, b), Math.max(a, b)});
            }
        }
        spans.sort(Comparator.comparingDouble(span -> span[0]));
        double reached = 0;
        for (double[] span : spans) {
            reached = span[0] <= reached + 2 * withinMm ? Math.max(reached, span[1]) : reached;
        }
        return reached >= side.length() - 2 * withinMm;
    }

    /** Asked of the longer one: the direction of a short side hangs on its last digits. */
    private boolean inOneLine(Side one, Side other) {
        boolean first = one.length() >= other.length();
        Side longer = first ? one : other;
        Side shorter = first ? other : one;
        return longer.beside(shorter.from) <= withinMm && longer.beside(shorter.to) <= withinMm;
    }

    private boolean near(Side one, Side other) {
        return Math.max(one.from.getX(), one.to.getX()) + withinMm >= Math.min(other.from.getX(), other.to.getX())
                && Math.max(other.from.getX(), other.to.getX()) + withinMm >= Math.min(one.from.getX(), one.to.getX())
                && Math.max(one.from.getY(), one.to.getY()) + withinMm >= Math.min(other.from.getY(), other.to.getY())
                && Math.max(other.from.getY(), other.to.getY()) + withinMm >= Math.min(one.from.getY(), one.to.getY());
    }
}
