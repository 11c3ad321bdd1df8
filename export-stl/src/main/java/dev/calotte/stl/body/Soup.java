package dev.calotte.stl.body;

import dev.calotte.document.Mesh;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A surface while it is made: vertices, and triangles counter-clockwise seen from outside. */
final class Soup {

    private final List<double[]> vertices = new ArrayList<>();
    private final List<int[]> triangles = new ArrayList<>();

    static Soup of(Mesh mesh) {
        Soup soup = new Soup();
        for (int vertex = 0; vertex < mesh.vertexCount(); vertex++) {
            soup.vertex(mesh.at(vertex, 0), mesh.at(vertex, 1), mesh.at(vertex, 2));
        }
        for (int i = 0; i < mesh.triangleCount(); i++) {
            soup.triangle(mesh.corner(i, 0), mesh.corner(i, 1), mesh.corner(i, 2));
        }
        return soup;
    }

    int vertex(double... xyz) {
        vertices.add(xyz);
        return vertices.size() - 1;
    }

    void triangle(int... corners) {
        triangles.add(corners);
    }

    List<double[]> vertices() {
        return vertices;
    }

    List<int[]> triangles() {
        return triangles;
    }

    double least(int axis) {
        return triangles.stream()
                .flatMapToDouble(t -> Arrays.stream(t).mapToDouble(v -> vertices.get(v)[axis]))
                .min()
                .orElse(0);
    }

    double most(int axis) {
        return triangles.stream()
                .flatMapToDouble(t -> Arrays.stream(t).mapToDouble(v -> vertices.get(v)[axis]))
                .max()
                .orElse(0);
    }

    /** What hangs together, in the order of the first triangle of each. */
    List<Soup> parts() {
        int[] group = new int[vertices.size()];
        for (int i = 0; i < group.length; i++) {
            group[i] = i;
        }
        for (int[] triangle : triangles) {
            join(group, triangle[0], triangle[1]);
            join(group, triangle[0], triangle[2]);
        }
        List<Integer> roots = triangles.stream()
                .map(triangle -> root(group, triangle[0]))
                .distinct()
                .toList();
        List<Soup> parts = new ArrayList<>();
        for (int root : roots) {
            Soup part = new Soup();
            part.vertices.addAll(vertices);
            triangles.stream()
                    .filter(triangle -> root(group, triangle[0]) == root)
                    .forEach(part.triangles::add);
            parts.add(part);
        }
        return parts;
    }

    private static void join(int[] group, int one, int other) {
        group[root(group, other)] = root(group, one);
    }

    private static int root(int[] group, int vertex) {
        int at = vertex;
        while (group[at] != at) {
            group[at] = group[group[at]];
            at = group[at];
        }
        return at;
    }

    Mesh mesh(String name, String title) {
        return new Packing(vertices, triangles).mesh(name, title);
    }
}
