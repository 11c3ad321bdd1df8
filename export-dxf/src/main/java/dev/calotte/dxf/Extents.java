package dev.calotte.dxf;

/** The least box round what was seen; the origin if nothing was. */
final class Extents {

    private final double[] least = new double[3];
    private final double[] most = new double[3];
    private boolean empty = true;

    void add(double x, double y, double z) {
        add(0, x);
        add(1, y);
        add(2, z);
        empty = false;
    }

    private void add(int axis, double value) {
        least[axis] = empty ? value : Math.min(least[axis], value);
        most[axis] = empty ? value : Math.max(most[axis], value);
    }

    double least(int axis) {
        return least[axis];
    }

    double most(int axis) {
        return most[axis];
    }

    double size(int axis) {
        return most[axis] - least[axis];
    }
}
