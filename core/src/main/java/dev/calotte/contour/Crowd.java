package dev.calotte.contour;

import dev.calotte.document.Polyline;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * Which paths are to be looked at side by side: those whose boxes meet those of others, and all but plain triangles,
 * which cannot lie on themselves. The others are cut once, as a rule nearly all of a large drawing.
 */
final class Crowd {

    /** Least x and y, greatest x and y of each path. */
    private final double[] boxes;

    private final Bands bands;
    private final Strip[] strips;
    private final BitSet crowded = new BitSet();

    private Crowd(List<Polyline> paths) {
        this.boxes = new double[4 * paths.size()];
        LeftEnds order = new LeftEnds(paths.size());
        for (int number = 0; number < paths.size(); number++) {
            Polyline path = paths.get(number);
            box(path, 4 * number);
            order.add(number, boxes[4 * number]);
            if (!isPlainTriangle(path)) {
                crowded.set(number);
            }
        }
        this.bands = new Bands(paths.size(), number -> boxes[4 * number + 1], number -> boxes[4 * number + 3]);
        this.strips = new Strip[bands.count()];
        Arrays.setAll(strips, band -> new Strip());
        order.sort();
        for (int i = 0; i < order.size(); i++) {
            place(order.number(i));
        }
    }

    /** The places of such paths in a list. */
    static BitSet of(List<Polyline> paths) {
        return new Crowd(paths).crowded;
    }

    private void box(Polyline path, int at) {
        double left = path.x(0);
        double low = path.y(0);
        double right = left;
        double high = low;
        for (int i = 1; i < path.size(); i++) {
            left = Math.min(left, path.x(i));
            low = Math.min(low, path.y(i));
            right = Math.max(right, path.x(i));
            high = Math.max(high, path.y(i));
        }
        boxes[at] = left;
        boxes[at + 1] = low;
        boxes[at + 2] = right;
        boxes[at + 3] = high;
    }

    private void place(int number) {
        double left = boxes[4 * number];
        double low = boxes[4 * number + 1];
        double high = boxes[4 * number + 3];
        int last = bands.of(high + Side.APART);
        for (int band = bands.of(low - Side.APART); band <= last; band++) {
            Strip strip = strips[band];
            strip.leaveBehind(left);
            for (int i = 0; i < strip.size(); i++) {
                if (strip.isLevel(i, low, high)) {
                    crowded.set(number);
                    crowded.set(strip.number(i));
                }
            }
            strip.add(number, low, high, boxes[4 * number + 2]);
        }
    }

    /** Whether no corner of a triangle lies, within twice the width of a cut, on the side across from it. */
    private static boolean isPlainTriangle(Polyline path) {
        if (path.size() != 3 || !path.isClosed()) {
            return false;
        }
        double ux = path.x(1) - path.x(0);
        double uy = path.y(1) - path.y(0);
        double vx = path.x(2) - path.x(0);
        double vy = path.y(2) - path.y(0);
        double twiceArea = ux * vy - uy * vx;
        double longest =
                Math.max(Math.max(ux * ux + uy * uy, vx * vx + vy * vy), (vx - ux) * (vx - ux) + (vy - uy) * (vy - uy));
        return twiceArea * twiceArea > 4 * Side.APART * Side.APART * longest;
    }
}
