package dev.calotte.sphere;

/** How the points of a face are spaced before they lie on the sphere. */
public enum Spacing {
    /**
     * The flat face is divided equally and projected from the centre: a point is its weights times the corners,
     * brought to length 1. For every class. (Called method 1 in the literature, from memory; Clinton, NASA CR-1734,
     * 1971.)
     */
    CHORD,
    /**
     * Class I: the edges of the solid are cut in equal arcs; inside, three great circles join the points of two edges
     * each, they cross pairwise in three points near each other, and the point is the sum of those three, brought to
     * length 1. (The construction that Popko, Divided Spheres, 2012, describes as arcs between edge points; the choice
     * of the centre on the sphere rather than on the flat face is ours, they differ by up to 8e-5 of the radius.)
     * A half sphere of even frequency is <em>not</em> flat at the equator.
     */
    ARC,
    /** Class I, frequency a power of 2: every triangle is split into four at the midpoints of its arcs, again and again. */
    MIDARC,
    /**
     * Every point stays on the sphere and keeps the solid's symmetry (class III: its rotations), and what freedom is
     * left is used for the goal of a {@link Fitting}. For every class, up to 20V; looked for from several starts, not
     * proved to be the best there is.
     */
    FITTED
}
