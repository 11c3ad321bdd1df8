package dev.calotte.document;

import java.util.Optional;

/**
 * A chain of sides, open or closed. A closed one does not repeat its first corner. Sides are straight; those of an outline
 * may be arcs, each given by its bulge as DXF does it: the tangent of a quarter of the angle it sweeps, above 0 where it
 * runs counter-clockwise, 0 for a straight side.
 */
public final class Polyline implements Shape {

    private final Operation operation;
    private final boolean closed;
    private final double[] xy;
    private final double[] bulges;

    private Polyline(Operation operation, boolean closed, double[] xy, double[] bulges) {
        if (xy.length % 2 != 0 || xy.length < (closed ? 6 : 4)) {
            throw new IllegalArgumentException("a polyline needs x and y of " + (closed ? 3 : 2) + " corners at least");
        }
        this.operation = operation;
        this.closed = closed;
        if (bulges.length != xy.length / 2) {
            throw new IllegalArgumentException(bulges.length + " bulges are not one for each corner");
        }
        this.xy = xy.clone();
        this.bulges = bulges.clone();
    }

    /**
     * An outline.
     *
     * @param operation what is done along it
     * @param xy x and y of its corners in millimetres, at least three; counter-clockwise round a part, clockwise round
     *     an opening
     * @return the polyline
     */
    public static Polyline closed(Operation operation, double... xy) {
        return new Polyline(operation, true, xy, new double[xy.length / 2]);
    }

    /**
     * An outline with arcs.
     *
     * @param operation what is done along it
     * @param xy x and y of its corners in millimetres, at least three; counter-clockwise round a part, clockwise round
     *     an opening
     * @param bulges one for each corner, that of the side from it to the next, or from the last to the first: the tangent
     *     of a quarter of the sweep, above 0 counter-clockwise, 0 for a straight side
     * @return the polyline
     */
    public static Polyline closed(Operation operation, double[] xy, double[] bulges) {
        return new Polyline(operation, true, xy, bulges);
    }

    /**
     * A line with two ends.
     *
     * @param operation what is done along it
     * @param xy x and y of its corners in millimetres, at least two
     * @return the polyline
     */
    public static Polyline open(Operation operation, double... xy) {
        return new Polyline(operation, false, xy, new double[xy.length / 2]);
    }

    /**
     * A line with two ends and arcs.
     *
     * @param operation what is done along it
     * @param xy x and y of its corners in millimetres, at least two
     * @param bulges one for each corner, that of the side from it to the next, and 0 for the last: the tangent of a quarter
     *     of the sweep, above 0 counter-clockwise, 0 for a straight side
     * @return the polyline
     */
    public static Polyline open(Operation operation, double[] xy, double[] bulges) {
        if (bulges.length > 0 && bulges[bulges.length - 1] != 0) {
            throw new IllegalArgumentException("no side begins at the last corner of an open path");
        }
        return new Polyline(operation, false, xy, bulges);
    }

    @Override
    public Operation operation() {
        return operation;
    }

    /**
     * Whether the last corner is joined to the first.
     *
     * @return true for an outline
     */
    public boolean isClosed() {
        return closed;
    }

    /**
     * How many corners it has.
     *
     * @return the number of corners
     */
    public int size() {
        return xy.length / 2;
    }

    /**
     * Where a corner is.
     *
     * @param corner from 0
     * @return its x in millimetres
     */
    public double x(int corner) {
        return xy[2 * corner];
    }

    /**
     * Where a corner is.
     *
     * @param corner from 0
     * @return its y in millimetres
     */
    public double y(int corner) {
        return xy[2 * corner + 1];
    }

    /**
     * How far the side that begins at a corner bends.
     *
     * @param corner from 0
     * @return the tangent of a quarter of the angle it sweeps, above 0 counter-clockwise; 0 if it is straight
     */
    public double bulge(int corner) {
        return bulges[corner];
    }

    /**
     * The arc that begins at a corner.
     *
     * @param corner from 0
     * @return the side from there to the next corner, or from the last to the first; empty if it is straight
     */
    public Optional<Arc> arc(int corner) {
        int next = (corner + 1) % size();
        return bulge(corner) == 0
                ? Optional.empty()
                : Optional.of(Arc.over(x(corner), y(corner), x(next), y(next), bulge(corner)));
    }
}
