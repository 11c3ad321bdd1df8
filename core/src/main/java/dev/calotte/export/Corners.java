package dev.calotte.export;

import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import java.util.Arrays;

/**
 * The corners of a path as they are read, in millimetres, y upwards. What files say in several ways becomes one: a path that
 * ends where it began is closed, corners that lie on each other are one, and of two arcs that enclose an area each is halved.
 */
public final class Corners {

    /** Corners that are no further apart are one. */
    private static final double SAME_MM = 1e-6;

    private double[] xyb = new double[12];
    private int size;

    /** No corners. */
    public Corners() {}

    /**
     * Adds a corner.
     *
     * @param xMm where it is
     * @param yMm where it is
     * @param bulge of the side that begins there, as a {@link Polyline} has it
     */
    public void add(double xMm, double yMm, double bulge) {
        if (3 * size == xyb.length) {
            xyb = Arrays.copyOf(xyb, 6 * size);
        }
        xyb[3 * size] = xMm;
        xyb[3 * size + 1] = yMm;
        xyb[3 * size + 2] = bulge;
        size++;
    }

    /**
     * The path through the corners.
     *
     * @param operation what is done along it
     * @param joined whether the last corner is joined to the first
     * @return the path
     * @throws IllegalArgumentException if there are too few corners; the message says how many
     */
    public Polyline path(Operation operation, boolean joined) {
        boolean closed = joined || (size > 3 && same(0, size - 1));
        dropRepeated(closed);
        if (closed && size == 2 && (xyb[2] != 0 || xyb[5] != 0)) {
            halveArcs();
        }
        if (size < (closed ? 3 : 2)) {
            throw new IllegalArgumentException("it has " + size + " corners, and needs " + (closed ? 3 : 2));
        }
        double[] xy = new double[2 * size];
        double[] bulges = new double[size];
        for (int i = 0; i < size; i++) {
            xy[2 * i] = xyb[3 * i];
            xy[2 * i + 1] = xyb[3 * i + 1];
            bulges[i] = closed || i < size - 1 ? xyb[3 * i + 2] : 0;
        }
        return closed ? Polyline.closed(operation, xy, bulges) : Polyline.open(operation, xy, bulges);
    }

    /** Of corners that lie on each other the last stays, with the side that begins there. */
    private void dropRepeated(boolean closed) {
        int kept = 0;
        for (int i = 0; i < size; i++) {
            boolean again = kept > 0 && same(kept - 1, i);
            kept = again ? kept - 1 : kept;
            System.arraycopy(xyb, 3 * i, xyb, 3 * kept, 3);
            kept++;
        }
        if (closed && kept > 1 && same(0, kept - 1)) {
            kept--;
        }
        size = kept;
    }

    private boolean same(int one, int other) {
        return Math.abs(xyb[3 * one] - xyb[3 * other]) <= SAME_MM
                && Math.abs(xyb[3 * one + 1] - xyb[3 * other + 1]) <= SAME_MM;
    }

    /** Two arcs enclose an area, and a path has three corners at least. */
    private void halveArcs() {
        double[] two = Arrays.copyOf(xyb, 6);
        size = 0;
        for (int i = 0; i < 2; i++) {
            double bulge = two[3 * i + 2];
            double half = StrictMath.tan(StrictMath.atan(bulge) / 2);
            int next = 3 * (1 - i);
            double across = two[next] - two[3 * i];
            double upwards = two[next + 1] - two[3 * i + 1];
            add(two[3 * i], two[3 * i + 1], half);
            add(two[3 * i] + across / 2 + bulge * upwards / 2, two[3 * i + 1] + upwards / 2 - bulge * across / 2, half);
        }
    }
}
