package dev.calotte.svg.read;

import dev.calotte.document.Circle;
import dev.calotte.document.Operation;
import dev.calotte.document.Shape;
import dev.calotte.export.Corners;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** A line as it is read, from side to side. */
final class Track {

    /** Twice the last digit of our files, and what two of them come to across each other. */
    private static final double ROUNDING_MM = 3e-4;

    private static final double SAME_MM = 1e-6;

    private final Outlines outlines;
    private final List<Side> sides = new ArrayList<>();
    private final double beginX;
    private final double beginY;
    private double x;
    private double y;
    private boolean closed;

    /**
     * How an arc bends.
     *
     * @param radius in user units, at least 0
     * @param large whether it is the longer of the two that are possible
     * @param clockwise as seen on the page
     */
    record Bend(double radius, boolean large, boolean clockwise) {}

    Track(Outlines outlines, double xMm, double yMm) {
        this.outlines = outlines;
        this.beginX = xMm;
        this.beginY = yMm;
        this.x = xMm;
        this.y = yMm;
    }

    void line(double toX, double toY) throws IOException {
        add(toX, toY, new Bend(0, false, false));
    }

    /** An arc that is too flat for its ends becomes half a circle (SVG 1.1, section F.6.6). */
    void arc(Bend bend, double toX, double toY) throws IOException {
        add(toX, toY, bend);
    }

    private void add(double toX, double toY, Bend bend) throws IOException {
        outlines.count();
        Sheet sheet = outlines.sheet();
        Side side = Side.of(x, y, sheet.xMm(toX), sheet.yMm(toY), bend, sheet.unitMm());
        if (bend.large() && side.chordMm() <= SAME_MM) {
            throw outlines.elements().wrong("an arc ends where it begins; divide it");
        }
        sides.add(side);
        x = side.toX();
        y = side.toY();
    }

    void close() {
        closed = true;
    }

    Shape shape(Operation operation) throws IOException {
        if (isCircle()) {
            Side half = sides.get(0);
            return new Circle(
                    operation, (half.fromX() + half.toX()) / 2, (half.fromY() + half.toY()) / 2, half.radiusMm());
        }
        Corners corners = new Corners();
        for (Side side : LongArcs.of(sides)) {
            corners.add(side.fromX(), side.fromY(), side.bulge());
        }
        corners.add(x, y, 0);
        try {
            return corners.path(operation, closed);
        } catch (IllegalArgumentException tooFew) {
            throw outlines.elements().wrong("of a line: " + tooFew.getMessage());
        }
    }

    private boolean isCircle() {
        return sides.size() == 2
                && sides.stream().allMatch(side -> side.isHalfCircle(ROUNDING_MM))
                && sides.get(0).bulge() * sides.get(1).bulge() > 0
                && Math.abs(x - beginX) <= SAME_MM
                && Math.abs(y - beginY) <= SAME_MM;
    }
}
