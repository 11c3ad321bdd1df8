package dev.calotte.dxf;

/** The least box round what was seen; the origin if nothing was. */
final class Extents {

    private final double[] least = new double[3];
    private final double[] most = new double[3];
    private boolean empty = true;

    void add(double... place) {
        for (int axis = 0; axis < 3; axis++) {
            least[axis] = empty ? place[axis] : Math.min(least[axis], place[axis]);
            most[axis] = empty ? place[axis] : Math.max(most[axis], place[axis]);
        }
        empty = false;
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
