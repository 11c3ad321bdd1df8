package dev.calotte.sphere;

/**
 * Where a point lies on its solid, in whole numbers: its identity. Two points are the same if and only if their sites
 * are equal, so nothing is ever merged by nearness.
 */
public sealed interface Site {

    /**
     * A corner of the solid.
     *
     * @param corner the number of the corner
     */
    record Corner(int corner) implements Site {}

    /**
     * A point inside an edge of the solid.
     *
     * @param from the lower-numbered corner of the edge
     * @param to the higher-numbered corner
     * @param step how many parts of the edge lie between {@code from} and the point
     * @param parts how many parts the edge has
     */
    record OnEdge(int from, int to, int step, int parts) implements Site {}

    /**
     * A point inside a face of the solid.
     *
     * @param face the number of the face
     * @param a weight of the face's first corner, above 0
     * @param b weight of the second corner, above 0
     * @param c weight of the third corner, above 0; the three add up to the triangulation number
     */
    record InFace(int face, int a, int b, int c) implements Site {}
}
