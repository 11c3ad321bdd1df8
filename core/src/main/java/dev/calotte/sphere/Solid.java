package dev.calotte.sphere;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * A regular solid of triangles, its corners on the unit sphere, a corner at +z and the next one over the x axis. Faces
 * are listed counter-clockwise seen from outside.
 */
@SuppressWarnings("ImmutableEnumChecker") // the arrays are written once, in the constructor, and never handed out
public enum Solid {
    /** Four faces, three at a corner. */
    TETRAHEDRON(3, 1, new double[] {-1.0 / 3}, new double[] {0}, false, new int[][] {
        {0, 1, 2}, {0, 2, 3}, {0, 3, 1}, {1, 3, 2}
    }),
    /** Eight faces, four at a corner. */
    OCTAHEDRON(4, 2, new double[] {0}, new double[] {0}, true, new int[][] {
        {0, 1, 2}, {0, 2, 3}, {0, 3, 4}, {0, 4, 1}, {5, 2, 1}, {5, 3, 2}, {5, 4, 3}, {5, 1, 4}
    }),
    /** Twenty faces, five at a corner. */
    ICOSAHEDRON(5, 3, new double[] {1 / Math.sqrt(5), -1 / Math.sqrt(5)}, new double[] {0, 0.5}, true, new int[][] {
        {0, 1, 2}, {0, 2, 3}, {0, 3, 4}, {0, 4, 5}, {0, 5, 1},
        {1, 6, 2}, {2, 7, 3}, {3, 8, 4}, {4, 9, 5}, {5, 10, 1},
        {2, 6, 7}, {3, 7, 8}, {4, 8, 9}, {5, 9, 10}, {1, 10, 6},
        {11, 7, 6}, {11, 8, 7}, {11, 9, 8}, {11, 10, 9}, {11, 6, 10}
    });

    private final int valence;
    private final int rowsPerFrequency;
    private final Vector3D[] corners;
    private final int[][] faces;
    private final int[][] neighbours;
    private final int[][] edges;
    private final int[][] edgeOf;

    Solid(int valence, int rowsPerFrequency, double[] heights, double[] shifts, boolean foot, int[][] faces) {
        this.valence = valence;
        this.rowsPerFrequency = rowsPerFrequency;
        this.corners = corners(valence, heights, shifts, foot);
        this.faces = faces;
        this.neighbours = new int[faces.length][3];
        this.edgeOf = new int[faces.length][3];
        this.edges = new int[faces.length * 3 / 2][];
        join();
    }

    private static Vector3D[] corners(int valence, double[] heights, double[] shifts, boolean foot) {
        Vector3D[] corners = new Vector3D[1 + valence * heights.length + (foot ? 1 : 0)];
        corners[0] = Vector3D.PLUS_K;
        corners[corners.length - 1] = Vector3D.MINUS_K;
        for (int ring = 0; ring < heights.length; ring++) {
            double width = Math.sqrt(1 - heights[ring] * heights[ring]);
            for (int k = 0; k < valence; k++) {
                double azimuth = 2 * Math.PI * (k + shifts[ring]) / valence;
                corners[1 + ring * valence + k] =
                        new Vector3D(width * StrictMath.cos(azimuth), width * StrictMath.sin(azimuth), heights[ring]);
            }
        }
        return corners;
    }

    private void join() {
        int count = 0;
        for (int f = 0; f < faces.length; f++) {
            for (int k = 0; k < 3; k++) {
                int from = faces[f][k];
                int to = faces[f][(k + 1) % 3];
                neighbours[f][k] = faceWith(to, from);
                if (from < to) {
                    edges[count] = new int[] {from, to};
                    edgeOf[f][k] = count++;
                }
            }
        }
        for (int f = 0; f < faces.length; f++) {
            for (int k = 0; k < 3; k++) {
                if (faces[f][k] > faces[f][(k + 1) % 3]) {
                    int across = neighbours[f][k];
                    edgeOf[f][k] = edgeOf[across][place(across, faces[f][(k + 1) % 3])];
                }
            }
        }
    }

    private int faceWith(int from, int to) {
        for (int f = 0; f < faces.length; f++) {
            for (int k = 0; k < 3; k++) {
                if (faces[f][k] == from && faces[f][(k + 1) % 3] == to) {
                    return f;
                }
            }
        }
        throw new AssertionError("the solid is not closed at " + from + "-" + to);
    }

    /** The place of a corner in a face. */
    int place(int face, int corner) {
        int[] f = faces[face];
        return f[0] == corner ? 0 : f[1] == corner ? 1 : 2;
    }

    /** The face across side k, which runs from the face's corner k to the next. */
    int neighbour(int face, int k) {
        return neighbours[face][k];
    }

    /** The edge that is side k of a face. */
    int edge(int face, int k) {
        return edgeOf[face][k];
    }

    /** The lower-numbered corner of an edge (end 0) or the higher one (end 1). */
    int edgeEnd(int edge, int end) {
        return edges[edge][end];
    }

    /**
     * How many corners the solid has.
     *
     * @return the number of corners
     */
    public int cornerCount() {
        return corners.length;
    }

    /**
     * How many edges the solid has.
     *
     * @return the number of edges
     */
    public int edgeCount() {
        return edges.length;
    }

    /**
     * How many faces the solid has.
     *
     * @return the number of faces
     */
    public int faceCount() {
        return faces.length;
    }

    /**
     * How many faces meet at a corner.
     *
     * @return 3, 4 or 5
     */
    public int valence() {
        return valence;
    }

    /**
     * How many rows of panels there are from the crown to the foot for each step of the frequency, a corner up.
     *
     * @return 1, 2 or 3
     */
    public int rowsPerFrequency() {
        return rowsPerFrequency;
    }

    /**
     * Where a corner lies.
     *
     * @param corner the number of a corner
     * @return a unit vector
     */
    public Vector3D corner(int corner) {
        return corners[corner];
    }

    /**
     * A corner of a face.
     *
     * @param face the number of a face
     * @param k 0, 1 or 2, counter-clockwise seen from outside
     * @return the number of the corner
     */
    public int faceCorner(int face, int k) {
        return faces[face][k];
    }

    /**
     * The angle that an edge of the solid spans at the centre.
     *
     * @return the angle in radians
     */
    public double centralAngleRad() {
        return Vector3D.angle(corners[0], corners[1]);
    }
}
