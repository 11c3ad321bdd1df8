package dev.calotte.drawing;

import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * A rectangle on paper.
 *
 * @param left its least x
 * @param low its least y
 * @param right its largest x
 * @param high its largest y
 */
record Box(double left, double low, double right, double high) {

    static Box around(double x, double y, double width, double height) {
        return new Box(x - width / 2, y - height / 2, x + width / 2, y + height / 2);
    }

    double width() {
        return right - left;
    }

    double height() {
        return high - low;
    }

    double middleX() {
        return (left + right) / 2;
    }

    double middleY() {
        return (low + high) / 2;
    }

    /** Whether both have some area in common. */
    boolean meets(Box other) {
        return left < other.right && other.left < right && low < other.high && other.low < high;
    }

    /** Whether a stretch goes through it: whether some part of it lies between both pairs of sides at once. */
    boolean meets(Vector2D from, Vector2D to) {
        double[] way = {to.getX() - from.getX(), to.getY() - from.getY()};
        double[] least = {left - from.getX(), low - from.getY()};
        double[] most = {right - from.getX(), high - from.getY()};
        double begin = 0;
        double end = 1;
        for (int axis = 0; axis < 2; axis++) {
            if (way[axis] == 0) {
                end = least[axis] < 0 && most[axis] > 0 ? end : -1;
            } else {
                double one = least[axis] / way[axis];
                double two = most[axis] / way[axis];
                begin = Math.max(begin, Math.min(one, two));
                end = Math.min(end, Math.max(one, two));
            }
        }
        return begin < end;
    }

    Box grownBy(double margin) {
        return new Box(left - margin, low - margin, right + margin, high + margin);
    }
}
