package dev.calotte.svg.read;

import java.util.ArrayList;
import java.util.List;

/**
 * Joins arcs that were written in equal parts of a quarter turn at most, since of longer ones the middle would hang on the
 * last digit of the radius. Which of them were one is told by their length: n parts are only made of more than n - 1
 * quarters.
 */
final class LongArcs {

    /** What the rounding of our files comes to in a chord. */
    private static final double ROUNDING_MM = 4e-4;

    private static final double QUARTER = Math.PI / 2;

    private static final double ANGLE = 1e-3;

    private LongArcs() {}

    static List<Side> of(List<Side> sides) {
        List<Side> joined = new ArrayList<>();
        for (int i = 0; i < sides.size(); ) {
            int count = count(sides, i);
            joined.add(count == 1 ? sides.get(i) : join(sides.subList(i, i + count)));
            i += count;
        }
        return joined;
    }

    /** How many sides are one. */
    private static int count(List<Side> sides, int start) {
        Side first = sides.get(start);
        int run = 1;
        while (first.isArc() && start + run < sides.size() && run < 4 && follows(first, sides.get(start + run))) {
            run++;
        }
        double sweep = Math.abs(first.sweepRad());
        while (run > 1 && ((run - 1) * QUARTER > run * sweep + ANGLE || run * sweep > 2 * Math.PI - ANGLE)) {
            run--;
        }
        return run;
    }

    private static boolean follows(Side first, Side next) {
        double apart = ROUNDING_MM * (1 + 2 * first.radiusMm() / first.chordMm());
        return next.radiusMm() == first.radiusMm()
                && next.sweepRad() * first.sweepRad() > 0
                && Math.abs(first.sweepRad()) <= QUARTER + ANGLE
                && Math.abs(next.chordMm() - first.chordMm()) <= ROUNDING_MM
                && first.centresApartMm(next) <= apart;
    }

    private static Side join(List<Side> parts) {
        Side first = parts.get(0);
        Side last = parts.get(parts.size() - 1);
        double sweep = parts.stream().mapToDouble(Side::sweepRad).sum();
        return new Side(first.fromX(), first.fromY(), last.toX(), last.toY(), first.radiusMm(), sweep);
    }
}
