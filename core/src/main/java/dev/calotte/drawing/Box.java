package dev.calotte.drawing;

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

    Box grownBy(double margin) {
        return new Box(left - margin, low - margin, right + margin, high + margin);
    }
}
