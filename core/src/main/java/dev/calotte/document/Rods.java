package dev.calotte.document;

/**
 * Round rods that meet in balls, as one body that stands on a flat base: whatever of it lies below is cut off.
 */
public final class Rods implements Document {

    private final String name;
    private final String title;
    private final double diameterMm;
    private final double baseMm;
    private final double[] xyz;
    private final int[] ends;

    /**
     * Joins points by rods.
     *
     * @param name where the file belongs
     * @param title what it shows
     * @param diameterMm of a rod
     * @param baseMm the height of the base
     * @param xyz x, y and z of each point, in millimetres
     * @param ends the numbers of two points for each rod
     * @throws IllegalArgumentException if the numbers do not make whole points and rods
     */
    public Rods(String name, String title, double diameterMm, double baseMm, double[] xyz, int[] ends) {
        if (xyz.length % 3 != 0 || ends.length % 2 != 0) {
            throw new IllegalArgumentException("points have three coordinates and rods two ends");
        }
        this.name = name;
        this.title = title;
        this.diameterMm = diameterMm;
        this.baseMm = baseMm;
        this.xyz = xyz.clone();
        this.ends = ends.clone();
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public String title() {
        return title;
    }

    /**
     * How thick the rods are.
     *
     * @return the diameter in millimetres
     */
    public double diameterMm() {
        return diameterMm;
    }

    /**
     * Where the base is.
     *
     * @return its height in millimetres
     */
    public double baseMm() {
        return baseMm;
    }

    /**
     * How many points there are.
     *
     * @return the number of points
     */
    public int pointCount() {
        return xyz.length / 3;
    }

    /**
     * How many rods there are.
     *
     * @return the number of rods
     */
    public int size() {
        return ends.length / 2;
    }

    /**
     * An end of a rod.
     *
     * @param rod from 0
     * @param k 0 or 1
     * @return the number of the point
     */
    public int end(int rod, int k) {
        return ends[2 * rod + k];
    }

    /**
     * Where a point is.
     *
     * @param point from 0
     * @param axis 0 for x, 1 for y, 2 for z
     * @return the coordinate in millimetres
     */
    public double at(int point, int axis) {
        return xyz[3 * point + axis];
    }
}
