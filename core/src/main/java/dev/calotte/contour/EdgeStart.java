package dev.calotte.contour;

import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;

/** Lets the cut of an outline begin in the middle of its longest straight side; where all are arcs, it stays. */
final class EdgeStart {

    private EdgeStart() {}

    static Polyline of(Polyline path) {
        boolean cut = path.operation() == Operation.CUT_INNER || path.operation() == Operation.CUT_OUTER;
        int longest = path.isClosed() && cut ? longest(path) : -1;
        return longest < 0 ? path : from(path, longest);
    }

    private static int longest(Polyline path) {
        int longest = -1;
        double most = 0;
        for (int i = 0; i < path.size(); i++) {
            int next = (i + 1) % path.size();
            double across = path.x(next) - path.x(i);
            double upwards = path.y(next) - path.y(i);
            double square = path.bulge(i) == 0 ? across * across + upwards * upwards : 0;
            // Equal sides differ by rounding: the first of them is the one, on every piece of a pattern.
            if (square > most * (1 + 1e-9)) {
                most = square;
                longest = i;
            }
        }
        return longest;
    }

    private static Polyline from(Polyline path, int side) {
        int next = (side + 1) % path.size();
        Corners corners = new Corners();
        corners.add((path.x(side) + path.x(next)) / 2, (path.y(side) + path.y(next)) / 2, 0);
        for (int i = 0; i < path.size(); i++) {
            int corner = (next + i) % path.size();
            corners.add(path.x(corner), path.y(corner), path.bulge(corner));
        }
        return corners.closed(path.operation());
    }
}
