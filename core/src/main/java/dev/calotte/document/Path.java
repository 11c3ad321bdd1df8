package dev.calotte.document;

/** A chain of straight lines, open or closed. A closed one does not repeat its first corner. */
public final class Path implements Shape {

    private final Operation operation;
    private final boolean closed;
    private final double[] xy;

    private Path(Operation operation, boolean closed, double[] xy) {
        if (xy.length % 2 != 0 || xy.length < (closed ? 6 : 4)) {
            throw new IllegalArgumentException("a path needs x and y of " + (closed ? 3 : 2) + " corners at least");
        }
        this.operation = operation;
        this.closed = closed;
        this.xy = xy.clone();
    }

    /**
     * An outline.
     *
     * @param operation what is done along it
     * @param xy x and y of its corners in millimetres, at least three; counter-clockwise round a part, clockwise round
     *     an opening
     * @return the path
     */
    public static Path closed(Operation operation, double... xy) {
        return new Path(operation, true, xy);
    }

    /**
     * A line with two ends.
     *
     * @param operation what is done along it
     * @param xy x and y of its corners in millimetres, at least two
     * @return the path
     */
    public static Path open(Operation operation, double... xy) {
        return new Path(operation, false, xy);
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
}
