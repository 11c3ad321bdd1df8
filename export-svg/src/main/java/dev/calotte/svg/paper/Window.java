package dev.calotte.svg.paper;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A rectangle through which chains are seen. Sides are cut after Liang and Barsky, "A new concept and method for line
 * clipping", ACM Transactions on Graphics 3 (1984).
 *
 * @param left its least x
 * @param bottom its least y
 * @param right its largest x
 * @param top its largest y
 */
record Window(double left, double bottom, double right, double top) {

    /** Less than a file can tell. */
    private static final double NOTHING_MM = 1e-5;

    /** Round the points of all chains; the chains must not be none. */
    static Window round(List<double[]> chains) {
        double[] bounds = {
            Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY
        };
        for (double[] chain : chains) {
            for (int i = 0; i < chain.length; i++) {
                bounds[i % 2] = Math.min(bounds[i % 2], chain[i]);
                bounds[2 + i % 2] = Math.max(bounds[2 + i % 2], chain[i]);
            }
        }
        return new Window(bounds[0], bounds[1], bounds[2], bounds[3]);
    }

    double width() {
        return right - left;
    }

    double height() {
        return top - bottom;
    }

    Window moved(double right, double up) {
        return new Window(left + right, bottom + up, this.right + right, top + up);
    }

    Window grown(double sideways, double upwards) {
        return new Window(left - sideways, bottom - upwards, right + sideways, top + upwards);
    }

    /** Round it, back to where it begins. */
    double[] outline() {
        return new double[] {left, bottom, right, bottom, right, top, left, top, left, bottom};
    }

    /** What can be seen of chains. */
    List<double[]> of(List<double[]> chains) {
        List<double[]> seen = new ArrayList<>();
        for (double[] chain : chains) {
            if (!misses(chain)) {
                add(chain, seen);
            }
        }
        return seen;
    }

    /** Whether all of a chain lies beyond one of the sides, as most of a pattern does from a page. */
    private boolean misses(double[] chain) {
        boolean beyondLeft = true;
        boolean beyondBottom = true;
        boolean beyondRight = true;
        boolean beyondTop = true;
        for (int i = 0; i < chain.length; i += 2) {
            beyondLeft &= chain[i] < left;
            beyondRight &= chain[i] > right;
            beyondBottom &= chain[i + 1] < bottom;
            beyondTop &= chain[i + 1] > top;
        }
        return beyondLeft || beyondBottom || beyondRight || beyondTop;
    }

    private void add(double[] chain, List<double[]> seen) {
        double[] run = new double[chain.length];
        int length = 0;
        for (int i = 0; i + 3 < chain.length; i += 2) {
            double[] part = part(chain, i);
            boolean visible = part[0] < part[1];
            if (visible && length == 0) {
                length = put(run, 0, chain, i, part[0]);
            }
            if (visible) {
                length = put(run, length, chain, i, part[1]);
            }
            if (!visible || part[1] < 1) {
                keep(run, length, seen);
                length = 0;
            }
        }
        keep(run, length, seen);
    }

    private static void keep(double[] run, int length, List<double[]> seen) {
        if (length > 0) {
            seen.add(Arrays.copyOf(run, length));
        }
    }

    private static int put(double[] run, int length, double[] chain, int i, double t) {
        for (int axis = 0; axis < 2; axis++) {
            double from = chain[i + axis];
            double to = chain[i + 2 + axis];
            run[length + axis] = t == 1 ? to : from + t * (to - from);
        }
        return length + 2;
    }

    /** From where to where a side is inside, as parts of its length; the first is not the less if it is nowhere. */
    private double[] part(double[] chain, int i) {
        double dx = chain[i + 2] - chain[i];
        double dy = chain[i + 3] - chain[i + 1];
        double[] part = {0, 1};
        narrow(part, -dx, chain[i] - left);
        narrow(part, dx, right - chain[i]);
        narrow(part, -dy, chain[i + 1] - bottom);
        narrow(part, dy, top - chain[i + 1]);
        double length = Math.max(Math.abs(dx), Math.abs(dy));
        return (part[1] - part[0]) * length < NOTHING_MM ? new double[] {1, 0} : part;
    }

    private static void narrow(double[] part, double towards, double distance) {
        if (towards > 0) {
            part[1] = Math.min(part[1], distance / towards);
        } else if (towards < 0) {
            part[0] = Math.max(part[0], distance / towards);
        } else if (distance < 0) {
            part[1] = -1;
        }
    }
}
