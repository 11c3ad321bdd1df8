package dev.calotte.document;

import dev.calotte.geometry.TriangleNet;

/**
 * A solid, as the triangles of its surface: closed, every edge shared by exactly two triangles, all counter-clockwise
 * seen from outside. Its least x, y and z are 0, z = 0 is the face it is printed on.
 *
 * <pre>{@code
 * double[] corners = {0, 0, 0, 30, 0, 0, 0, 40, 0, 10, 10, 25};
 * int[] triangles = {0, 2, 1, 0, 1, 3, 1, 2, 3, 2, 0, 3};
 * Exporters.installed().write(new Mesh("wedge", "A wedge", corners, triangles), Path.of("wedge.stl"));
 * }</pre>
 */
public final class Mesh implements Document {

    private final String name;
    private final String title;
    private final double[] xyz;
    private final int[] triangles;

    /**
     * Makes a mesh.
     *
     * @param name where the file belongs
     * @param title what it shows
     * @param xyz x, y and z of each vertex in millimetres
     * @param triangles three vertex numbers each
     * @throws IllegalArgumentException if the surface is not closed
     */
    public Mesh(String name, String title, double[] xyz, int[] triangles) {
        this.name = name;
        this.title = title;
        this.xyz = xyz.clone();
        this.triangles = triangles.clone();
        TriangleNet net = new TriangleNet(xyz.length / 3, this.triangles);
        for (int half = 0; half < triangles.length; half++) {
            if (net.twin(half) < 0) {
                throw new IllegalArgumentException("the surface of " + name + " is open at triangle " + half / 3);
            }
        }
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
     * How many triangles there are.
     *
     * @return the number of triangles
     */
    public int triangleCount() {
        return triangles.length / 3;
    }

    /**
     * How many vertices there are.
     *
     * @return the number of vertices
     */
    public int vertexCount() {
        return xyz.length / 3;
    }

    /**
     * A corner of a triangle.
     *
     * @param triangle from 0
     * @param k 0, 1 or 2, counter-clockwise seen from outside
     * @return the number of the vertex
     */
    public int corner(int triangle, int k) {
        return triangles[3 * triangle + k];
    }

    /**
     * Where a vertex is.
     *
     * @param vertex the number of a vertex
     * @param axis 0 for x, 1 for y, 2 for z
     * @return the coordinate in millimetres
     */
    public double at(int vertex, int axis) {
        return xyz[3 * vertex + axis];
    }
}
