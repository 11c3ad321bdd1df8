package dev.calotte.check;

import dev.calotte.document.Circle;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * Compares all lines of a drawing, side by side, with those of the same drawing in another file: what is engraved, scored,
 * drilled, cut out or only shown. Where a path begins, which way it runs and how it is joined to others may differ.
 */
public final class LineMatch {

    private static final List<Operation> LAYERS = List.of(Operation.values());

    private static final int CELLS = 8;

    /** The middle of an arc, which hangs on the last digit of its radius. */
    private static final double BENT = 250;

    /** Shorter sides are what rounding leaves of two corners at one place. */
    private static final double SHORTEST = 4;

    private final List<Side> sides;
    private final List<Side> others;
    private final double withinMm;

    private LineMatch(List<Side> sides, List<Side> others, double withinMm) {
        this.sides = sides;
        this.others = others;
        this.withinMm = withinMm;
    }

    /** A straight side, an arc or a circle: its ends, and the middle of its way. */
    private record Side(Operation operation, Vector2D from, Vector2D to, Vector2D by) {

        Side moved(Vector2D way) {
            return new Side(operation, from.add(way), to.add(way), by.add(way));
        }

        /** In layers by what is done. */
        Vector3D place() {
            Vector2D middle = from.add(to).scalarMultiply(0.5);
            return new Vector3D(middle.getX(), middle.getY(), LAYERS.indexOf(operation));
        }

        boolean isLike(Side other, double within) {
            boolean there = from.distance(other.from) <= within && to.distance(other.to) <= within;
            boolean back = from.distance(other.to) <= within && to.distance(other.from) <= within;
            return (there || back) && by.distance(other.by) <= BENT * within;
        }
    }

    /**
     * Compares two drawings.
     *
     * @param shapes what a file shows
     * @param file the other file
     * @param shown what that shows
     * @param withinMm how exact the less exact of both is
     * @param findings takes what is wrong
     */
    public static void of(List<Shape> shapes, String file, List<Shape> shown, double withinMm, Findings findings) {
        new LineMatch(sides(shapes, withinMm), sides(shown, withinMm), withinMm).check(file, findings);
    }

    private void check(String file, Findings findings) {
        Cells there = new Cells(others.stream().map(Side::place).toList(), CELLS * withinMm);
        List<Side> foreign = new ArrayList<>();
        for (Side side : sides) {
            if (!take(there, side)) {
                foreign.add(side);
            }
        }
        int missing = there.left();
        if (missing > 0 && missing == others.size() && isMoved()) {
            findings.add(
                    Fault.MOVED,
                    "",
                    "all of it lies " + Findings.text(least(sides).distance(least(others))) + " mm from where " + file
                            + " has it.");
        } else if (missing > 0) {
            findings.add(
                    Fault.MISSING,
                    at(others.get(there.firstLeft())),
                    "a line of " + file + " is not here" + more(missing) + ".");
        } else if (!foreign.isEmpty()) {
            findings.add(
                    Fault.FOREIGN,
                    at(foreign.get(0)),
                    "a line is here that is not in " + file + more(foreign.size()) + ".");
        }
    }

    private static String more(int count) {
        return count == 1 ? "" : ", and " + (count - 1) + " more";
    }

    private boolean take(Cells there, Side side) {
        return there.take(side.place(), 2 * withinMm, i -> side.isLike(others.get(i), 2 * withinMm));
    }

    private boolean isMoved() {
        Vector2D way = least(others).subtract(least(sides));
        Cells there = new Cells(others.stream().map(Side::place).toList(), CELLS * withinMm);
        return sides.size() == others.size() && sides.stream().allMatch(side -> take(there, side.moved(way)));
    }

    private static Vector2D least(List<Side> sides) {
        double x = Double.POSITIVE_INFINITY;
        double y = Double.POSITIVE_INFINITY;
        for (Side side : sides) {
            x = Math.min(x, Math.min(side.from.getX(), side.to.getX()));
            y = Math.min(y, Math.min(side.from.getY(), side.to.getY()));
        }
        return new Vector2D(x, y);
    }

    private static String at(Side side) {
        return side.operation + String.format(Locale.ROOT, " x %.2f, y %.2f", side.by.getX(), side.by.getY());
    }

    private static List<Side> sides(List<Shape> shapes, double withinMm) {
        List<Side> sides = new ArrayList<>();
        for (Shape shape : shapes) {
            if (shape instanceof Circle circle) {
                Vector2D left = new Vector2D(circle.xMm() - circle.radiusMm(), circle.yMm());
                Vector2D right = new Vector2D(circle.xMm() + circle.radiusMm(), circle.yMm());
                sides.add(new Side(circle.operation(), left, right, right));
            } else {
                add((Polyline) shape, SHORTEST * withinMm, sides);
            }
        }
        return sides;
    }

    private static void add(Polyline path, double shortest, List<Side> sides) {
        int count = path.isClosed() ? path.size() : path.size() - 1;
        for (int i = 0; i < count; i++) {
            int next = (i + 1) % path.size();
            Vector2D from = new Vector2D(path.x(i), path.y(i));
            Vector2D to = new Vector2D(path.x(next), path.y(next));
            Vector2D half = to.subtract(from).scalarMultiply(0.5);
            // the sagitta is the bulge times half the chord, to the right of the way where it runs counter-clockwise
            Vector2D out = new Vector2D(half.getY(), -half.getX()).scalarMultiply(path.bulge(i));
            if (from.distance(to) > shortest) {
                sides.add(new Side(path.operation(), from, to, from.add(half).add(out)));
            }
        }
    }
}
