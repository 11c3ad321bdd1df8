package dev.calotte.sphere;

/**
 * The narrowest width of a panel: its smallest altitude, that upon its longest side.
 *
 * @param a a side
 * @param b another
 * @param c the third
 */
record Width(double a, double b, double c) {

    double side(int k) {
        return k == 0 ? a : k == 1 ? b : c;
    }

    double longest() {
        return Math.max(a, Math.max(b, c));
    }

    /** The side that is the longest; the first of equal ones. */
    int base() {
        return a >= b && a >= c ? 0 : b >= c ? 1 : 2;
    }

    /** Sixteen times the square of the area, after Heron of Alexandria. */
    private double heron() {
        return (a + b + c) * (b + c - a) * (c + a - b) * (a + b - c);
    }

    double narrowest() {
        return altitude(base());
    }

    /** The altitude upon a side. */
    double altitude(int side) {
        return Math.sqrt(Math.max(0, heron())) / 2 / side(side);
    }

    /** How the logarithm of the altitude upon a side begins to change with that of another side, or its own. */
    double slope(int side, int with) {
        double own = side(with) * side(with);
        double others = a * a + b * b + c * c - own;
        return 2 * own * (others - own) / heron() - (side == with ? 1 : 0);
    }
}
