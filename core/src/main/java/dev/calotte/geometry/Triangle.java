package dev.calotte.geometry;

/**
 * A plane triangle known by its three sides. The measures have the unit of the sides.
 *
 * <p>The area follows Kahan's ordering of Heron's formula (W. Kahan, "Miscalculating Area and Angles of a Needle-like
 * Triangle", 2000, section 2), which keeps full precision for flat triangles too.
 *
 * <pre>{@code
 * double area = new Triangle(3, 4, 5).area();
 * }</pre>
 *
 * @param a the first side, above 0
 * @param b the second side, above 0
 * @param c the third side, above 0
 */
public record Triangle(double a, double b, double c) {

    /**
     * Checks that the sides make a triangle.
     *
     * @param a the first side, above 0
     * @param b the second side, above 0
     * @param c the third side, above 0
     * @throws IllegalArgumentException if a side is not above 0 or not shorter than the other two together
     */
    public Triangle {
        if (!(a > 0 && b > 0 && c > 0) || !(a < b + c && b < a + c && c < a + b)) {
            throw new IllegalArgumentException("no triangle has the sides " + a + ", " + b + ", " + c);
        }
    }

    /**
     * One of the sides.
     *
     * @param k 0, 1 or 2
     * @return the side a, b or c
     */
    public double side(int k) {
        return switch (k) {
            case 0 -> a;
            case 1 -> b;
            case 2 -> c;
            default -> throw new IndexOutOfBoundsException(k);
        };
    }

    /**
     * The area.
     *
     * @return the area, in the square of the sides' unit
     */
    public double area() {
        double longest = Math.max(a, Math.max(b, c));
        double shortest = Math.min(a, Math.min(b, c));
        double middle = Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
        double product = (longest + (middle + shortest))
                * (shortest - (longest - middle))
                * (shortest + (longest - middle))
                * (longest + (middle - shortest));
        return Math.sqrt(product) / 4;
    }

    /**
     * The altitude over a side.
     *
     * @param k 0, 1 or 2
     * @return the distance of the opposite corner from the line of side k
     */
    public double altitude(int k) {
        return 2 * area() / side(k);
    }

    /**
     * The angle opposite a side.
     *
     * @param k 0, 1 or 2
     * @return the angle in radians
     */
    public double angleRad(int k) {
        double opposite = side(k);
        double left = side((k + 1) % 3);
        double right = side((k + 2) % 3);
        return StrictMath.atan2(4 * area(), left * left + right * right - opposite * opposite);
    }

    /**
     * The narrowest width: the narrowest strip that the triangle passes through, its smallest altitude.
     *
     * @return the smallest of the three altitudes
     */
    public double narrowestWidth() {
        return 2 * area() / Math.max(a, Math.max(b, c));
    }

    /**
     * The same shape in another size.
     *
     * @param factor above 0
     * @return the triangle with every side times the factor
     */
    public Triangle scaled(double factor) {
        return new Triangle(a * factor, b * factor, c * factor);
    }
}
