package dev.calotte.drawing;

import dev.calotte.document.Drawing.Part;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/** Looks for a place on a sheet where nothing is cut, row by row from the lower left corner. */
final class FreePlace {

    private static final double STEP = 10;
    private static final double CLEAR = 2;

    private final List<Polyline> outlines = new ArrayList<>();
    private final double widthMm;
    private final double heightMm;

    /**
     * Looks for a place.
     *
     * @param parts what lies on the sheet
     * @param widthMm how wide the place must be
     * @param heightMm how high
     */
    FreePlace(List<Part> parts, double widthMm, double heightMm) {
        this.widthMm = widthMm + 2 * CLEAR;
        this.heightMm = heightMm + 2 * CLEAR;
        for (Part part : parts) {
            for (Shape shape : part.shapes()) {
                if (shape instanceof Polyline path && path.operation() == Operation.CUT_OUTER) {
                    outlines.add(path);
                }
            }
        }
    }

    /** The lower left corner of the first place on a sheet of this size; empty if there is none. */
    Optional<Vector2D> on(double lengthMm, double sheetWidthMm) {
        for (double y = 0; y + heightMm <= sheetWidthMm; y += STEP) {
            double x = 0;
            while (x + widthMm <= lengthMm) {
                double left = x;
                double bottom = y;
                Optional<Polyline> inTheWay = outlines.stream()
                        .filter(path -> meets(path, left, bottom))
                        .findFirst();
                if (inTheWay.isEmpty()) {
                    return Optional.of(new Vector2D(x + CLEAR, y + CLEAR));
                }
                x += STEP;
            }
        }
        return Optional.empty();
    }

    /** Whether an outline has a side in the place, or has all of the place inside. */
    private boolean meets(Polyline path, double left, double bottom) {
        boolean inside = false;
        for (int i = 0; i < path.size(); i++) {
            int next = (i + 1) % path.size();
            if (crosses(path.x(i) - left, path.y(i) - bottom, path.x(next) - left, path.y(next) - bottom)) {
                return true;
            }
            boolean over = path.y(i) > bottom != path.y(next) > bottom;
            double share = (bottom - path.y(i)) / (path.y(next) - path.y(i));
            inside ^= over && left < path.x(i) + share * (path.x(next) - path.x(i));
        }
        return inside;
    }

    /** Whether a side has a point in the place, whose corner is the origin: Liang and Barsky's clipping, 1984. */
    private boolean crosses(double fromX, double fromY, double toX, double toY) {
        double[] span = {0, 1};
        return clip(fromX - toX, fromX, span)
                && clip(toX - fromX, widthMm - fromX, span)
                && clip(fromY - toY, fromY, span)
                && clip(toY - fromY, heightMm - fromY, span);
    }

    private static boolean clip(double slope, double room, double[] span) {
        if (slope == 0) {
            return room >= 0;
        }
        double at = room / slope;
        if (slope < 0) {
            span[0] = Math.max(span[0], at);
        } else {
            span[1] = Math.min(span[1], at);
        }
        return span[0] <= span[1];
    }
}
