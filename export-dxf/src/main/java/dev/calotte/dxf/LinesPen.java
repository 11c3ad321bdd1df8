package dev.calotte.dxf;

import dev.calotte.document.Arc;
import dev.calotte.document.Polyline;
import java.io.IOException;

/**
 * Draws each side of a path as {@code LINE} or {@code ARC}, from where the one before ended. An {@code ARC} always runs
 * counter-clockwise from its start to its end, so that of a side that runs clockwise begins where the side ends.
 */
final class LinesPen extends EntityPen {

    private static final double FULL = 360;
    private static final double LEAST_ANGLE = 1e-9;

    LinesPen(Entities entities) {
        super(entities);
    }

    @Override
    public void path(Layer layer, Polyline path) throws IOException {
        int sides = path.isClosed() ? path.size() : path.size() - 1;
        for (int i = 0; i < sides; i++) {
            if (Bends.bends(path, i)) {
                arc(layer, path.arc(i).orElseThrow());
            } else {
                line(layer, path, i);
            }
        }
    }

    private void line(Layer layer, Polyline path, int corner) throws IOException {
        int next = (corner + 1) % path.size();
        TagWriter tags = begin("LINE", layer, "AcDbLine");
        tags.place(10, path.x(corner), path.y(corner), 0);
        tags.place(11, path.x(next), path.y(next), 0);
    }

    private void arc(Layer layer, Arc arc) throws IOException {
        double end = arc.startRad() + arc.sweepRad();
        TagWriter tags = begin("ARC", layer, "AcDbArc");
        tags.place(10, arc.xMm(), arc.yMm(), 0);
        tags.number(40, arc.radiusMm());
        tags.fine(50, degrees(Math.min(arc.startRad(), end)));
        tags.fine(51, degrees(Math.max(arc.startRad(), end)));
    }

    /** From 0 to below 360, also after rounding. */
    private static double degrees(double rad) {
        double turns = rad / (2 * Math.PI);
        double degrees = FULL * (turns - Math.floor(turns));
        return degrees < FULL - LEAST_ANGLE ? degrees : 0;
    }
}
