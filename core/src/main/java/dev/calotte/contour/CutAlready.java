package dev.calotte.contour;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What of a side is cut with sides that come before it. */
final class CutAlready {

    private final Side side;
    private final List<Side> spans = new ArrayList<>();

    CutAlready(Side side) {
        this.side = side;
    }

    /** Notes a side that lies on this one. Where it ends on this one, its own corner is the end of the cut. */
    void add(Side other) {
        boolean along = side.along(other.fromX(), other.fromY()) < side.along(other.toX(), other.toY());
        Side turned = along ? other : other.reversed();
        spans.add(new Side(
                start(turned) > Side.APART ? turned.fromX() : side.fromX(),
                start(turned) > Side.APART ? turned.fromY() : side.fromY(),
                end(turned) < side.length() - Side.APART ? turned.toX() : side.toX(),
                end(turned) < side.length() - Side.APART ? turned.toY() : side.toY()));
    }

    private double start(Side span) {
        return side.along(span.fromX(), span.fromY());
    }

    private double end(Side span) {
        return side.along(span.toX(), span.toY());
    }

    /** What is left to cut, along the side. */
    List<Side> left() {
        spans.sort(Comparator.comparingDouble(this::start));
        List<Side> left = new ArrayList<>();
        Side last = new Side(side.fromX(), side.fromY(), side.fromX(), side.fromY());
        for (Side span : spans) {
            addGap(left, last, span);
            last = end(span) > end(last) ? span : last;
        }
        addGap(left, last, new Side(side.toX(), side.toY(), side.toX(), side.toY()));
        return left;
    }

    private void addGap(List<Side> left, Side before, Side after) {
        if (start(after) - end(before) > Side.APART) {
            left.add(before.upTo(after));
        }
    }
}
