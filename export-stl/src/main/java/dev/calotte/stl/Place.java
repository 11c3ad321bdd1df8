package dev.calotte.stl;

/**
 * A vertex as the file holds it.
 *
 * @param x millimetres
 * @param y millimetres
 * @param z millimetres
 */
record Place(float x, float y, float z) {

    static Place of(double x, double y, double z) {
        return new Place(single(x), single(y), single(z));
    }

    /** The nearest float; a negative zero becomes a zero, so that equal places have equal bits. */
    static float single(double value) {
        float rounded = (float) value + 0.0f;
        if (!Float.isFinite(rounded)) {
            throw new IllegalArgumentException("no STL file can hold the coordinate " + value);
        }
        return rounded;
    }
}
