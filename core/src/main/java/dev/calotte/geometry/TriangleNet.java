package dev.calotte.geometry;

import java.util.Arrays;

/**
 * How triangles join along their edges: a half-edge structure in plain arrays, linear in the number of triangles.
 *
 * <p>Half-edge {@code h = 3 f + k} runs from corner k of triangle f to corner k + 1, counter-clockwise as the triangle
 * is listed. Edges are numbered in the order in which their first half-edge comes. Every edge has one or two
 * triangles, and at every vertex the triangles form a single fan.
 *
 * <pre>{@code
 * TriangleNet kite = new TriangleNet(4, new int[] {0, 1, 2, 2, 1, 3});
 * int across = kite.twin(1);
 * }</pre>
 */
public final class TriangleNet {

    private static final int NONE = -1;

    private final int vertexCount;
    private final int[] corners;
    private final int[] twins;
    private final int[] edgeOf;
    private final int[] firstHalf;
    private final int[] spoke;

    /**
     * Joins triangles along their common edges.
     *
     * @param vertexCount how many vertices there are; each must be used
     * @param corners three vertex numbers a triangle, counter-clockwise; not copied and not to be changed
     * @throws IllegalArgumentException if an edge has more than two triangles or two that run the same way, if a
     *     vertex is unused, or if triangles touch at a vertex without sharing an edge there
     */
    public TriangleNet(int vertexCount, int[] corners) {
        this.vertexCount = vertexCount;
        this.corners = corners;
        this.twins = pair(vertexCount, corners);
        this.edgeOf = new int[corners.length];
        this.firstHalf = numberEdges();
        this.spoke = spokes();
    }

    private static int[] pair(int vertexCount, int[] corners) {
        int[] start = new int[vertexCount + 1];
        for (int corner : corners) {
            start[corner + 1]++;
        }
        Arrays.parallelPrefix(start, Integer::sum);
        int[] next = start.clone();
        int[] leaving = new int[corners.length];
        for (int h = 0; h < corners.length; h++) {
            leaving[next[corners[h]]++] = h;
        }
        int[] twins = new int[corners.length];
        int[] known = new int[vertexCount];
        int[] arriving = new int[vertexCount];
        Arrays.fill(known, NONE);
        for (int v = 0; v < vertexCount; v++) {
            for (int i = start[v]; i < start[v + 1]; i++) {
                int half = before(leaving[i]);
                int from = corners[half];
                if (known[from] == v || from == v) {
                    throw usedTwice(corners, start, leaving);
                }
                known[from] = v;
                arriving[from] = half;
            }
            for (int i = start[v]; i < start[v + 1]; i++) {
                int to = corners[after(leaving[i])];
                twins[leaving[i]] = known[to] == v ? arriving[to] : NONE;
            }
        }
        return twins;
    }

    /** Names the first half-edge that runs like another one, or from a vertex to itself. */
    private static IllegalArgumentException usedTwice(int[] corners, int[] start, int[] leaving) {
        int half = 0;
        while (corners[half] != corners[after(half)] && alike(half, corners, start, leaving) == 1) {
            half++;
        }
        return new IllegalArgumentException(
                "the edge from " + corners[half] + " to " + corners[after(half)] + " is used twice the same way");
    }

    private static int alike(int half, int[] corners, int[] start, int[] leaving) {
        int count = 0;
        for (int i = start[corners[half]]; i < start[corners[half] + 1]; i++) {
            count += corners[after(leaving[i])] == corners[after(half)] ? 1 : 0;
        }
        return count;
    }

    private int[] numberEdges() {
        int[] first = new int[corners.length];
        int count = 0;
        for (int h = 0; h < corners.length; h++) {
            if (twins[h] == NONE || h < twins[h]) {
                first[count] = h;
                edgeOf[h] = count++;
            } else {
                edgeOf[h] = edgeOf[twins[h]];
            }
        }
        return Arrays.copyOf(first, count);
    }

    /** For each vertex the half-edge from which its fan is walked counter-clockwise: the open side's, if there is one. */
    private int[] spokes() {
        int[] spokes = new int[vertexCount];
        int[] triangles = new int[vertexCount];
        Arrays.fill(spokes, NONE);
        for (int h = 0; h < corners.length; h++) {
            int v = corners[h];
            triangles[v]++;
            if (spokes[v] == NONE || twins[h] == NONE) {
                spokes[v] = h;
            }
        }
        for (int v = 0; v < vertexCount; v++) {
            if (spokes[v] == NONE || fanSize(spokes[v]) != triangles[v]) {
                throw new IllegalArgumentException("the triangles at vertex " + v + " do not form a single fan");
            }
        }
        return spokes;
    }

    private int fanSize(int first) {
        int size = 0;
        int h = first;
        do {
            size++;
            h = turn(h);
        } while (h != NONE && h != first);
        return size;
    }

    /**
     * The half-edge after a half-edge, counter-clockwise round its triangle.
     *
     * @param half a half-edge
     * @return the next one
     */
    public static int after(int half) {
        return half % 3 == 2 ? half - 2 : half + 1;
    }

    /**
     * The half-edge before a half-edge, counter-clockwise round its triangle.
     *
     * @param half a half-edge
     * @return the one before
     */
    public static int before(int half) {
        return half % 3 == 0 ? half + 2 : half - 1;
    }

    /**
     * The next half-edge that leaves the same vertex, counter-clockwise.
     *
     * @param half a half-edge
     * @return the next one round its start, or -1 where the fan ends at an open edge
     */
    public int turn(int half) {
        return twins[before(half)];
    }

    /**
     * How many vertices there are.
     *
     * @return the number of vertices
     */
    public int vertexCount() {
        return vertexCount;
    }

    /**
     * How many triangles there are.
     *
     * @return the number of triangles
     */
    public int triangleCount() {
        return corners.length / 3;
    }

    /**
     * How many edges there are.
     *
     * @return the number of edges
     */
    public int edgeCount() {
        return firstHalf.length;
    }

    /**
     * The vertex that a half-edge leaves.
     *
     * @param half a half-edge
     * @return its start
     */
    public int start(int half) {
        return corners[half];
    }

    /**
     * The vertex that a half-edge reaches.
     *
     * @param half a half-edge
     * @return its end
     */
    public int end(int half) {
        return corners[after(half)];
    }

    /**
     * The half-edge on the other side of the same edge.
     *
     * @param half a half-edge
     * @return its twin, or -1 at an open edge
     */
    public int twin(int half) {
        return twins[half];
    }

    /**
     * The edge that a half-edge is a side of.
     *
     * @param half a half-edge
     * @return the number of its edge
     */
    public int edge(int half) {
        return edgeOf[half];
    }

    /**
     * The first half-edge of an edge; the other, if any, is its twin.
     *
     * @param edge an edge
     * @return its first half-edge
     */
    public int half(int edge) {
        return firstHalf[edge];
    }

    /**
     * Where the walk round a vertex begins: {@link #turn} then visits its triangles counter-clockwise. At an open
     * vertex it is the open edge that has the fan on its left.
     *
     * @param vertex a vertex
     * @return a half-edge that leaves it
     */
    public int spoke(int vertex) {
        return spoke[vertex];
    }

    /**
     * Whether the fan of a vertex is open: whether it lies on the border.
     *
     * @param vertex a vertex
     * @return true on the border
     */
    public boolean isOpen(int vertex) {
        return twins[spoke[vertex]] == NONE;
    }
}
