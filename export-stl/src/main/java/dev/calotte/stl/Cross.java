package dev.calotte.stl;

/** The cross product of two sides of a facet: along its normal, and twice as long as its area is large. Used for one after another. */
final class Cross {

    private double x;
    private double y;
    private double z;

    /** Takes the facet of three vertices, of which all coordinates stand in a row. */
    void of(float[] xyz, int a, int b, int c) {
        double ux = (double) xyz[3 * b] - xyz[3 * a];
        double uy = (double) xyz[3 * b + 1] - xyz[3 * a + 1];
        double uz = (double) xyz[3 * b + 2] - xyz[3 * a + 2];
        double vx = (double) xyz[3 * c] - xyz[3 * a];
        double vy = (double) xyz[3 * c + 1] - xyz[3 * a + 1];
        double vz = (double) xyz[3 * c + 2] - xyz[3 * a + 2];
        x = uy * vz - uz * vy;
        y = uz * vx - ux * vz;
        z = ux * vy - uy * vx;
    }

    double length() {
        return Math.sqrt(x * x + y * y + z * z);
    }

    boolean hasLength() {
        return x * x + y * y + z * z > 0;
    }

    /** The product with a place. */
    double dot(double px, double py, double pz) {
        return px * x + py * y + pz * z;
    }

    /** The nearest floats along the normal; not numbers without an area. No zero is negative. */
    Place unit() {
        double length = length();
        return new Place((float) (x / length) + 0.0f, (float) (y / length) + 0.0f, (float) (z / length) + 0.0f);
    }
}
