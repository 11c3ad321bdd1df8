package dev.calotte.export;

/** Triangles in space as a file has them: each with corners of its own, in single precision, in millimetres. */
public final class Facets {

    private static final int NUMBERS = 9;

    private final String title;
    private final float[] corners;

    /**
     * Makes facets.
     *
     * @param title what the file says of itself, without spaces around it
     * @param corners nine numbers a facet: x, y and z of each corner, counter-clockwise seen from outside
     * @throws IllegalArgumentException if the numbers do not make whole facets
     */
    public Facets(String title, float[] corners) {
        if (corners.length % NUMBERS != 0) {
            throw new IllegalArgumentException(corners.length + " numbers do not make whole facets");
        }
        this.title = title;
        this.corners = corners.clone();
    }

    /**
     * What the file says of itself.
     *
     * @return one line of text, possibly empty
     */
    public String title() {
        return title;
    }

    /**
     * How many facets there are.
     *
     * @return the number of facets
     */
    public int size() {
        return corners.length / NUMBERS;
    }

    /**
     * Where a corner of a facet is.
     *
     * @param facet from 0
     * @param corner 0, 1 or 2, counter-clockwise seen from outside
     * @param axis 0 for x, 1 for y, 2 for z
     * @return the coordinate in millimetres
     */
    public float at(int facet, int corner, int axis) {
        return corners[NUMBERS * facet + 3 * corner + axis];
    }
}
