package dev.calotte.stl.body;

import dev.calotte.document.Mesh;
import java.util.Arrays;
import java.util.List;

/** Numbers vertices in the order of their use and moves them to where the least x, y and z are 0. */
final class Packing {

    private final List<double[]> vertices;
    private final List<int[]> triangles;

    Packing(List<double[]> vertices, List<int[]> triangles) {
        this.vertices = vertices;
        this.triangles = triangles;
    }

    Mesh mesh(String name, String title) {
        int[] numbers = new int[vertices.size()];
        int[] corners = new int[3 * triangles.size()];
        double[] xyz = new double[3 * vertices.size()];
        double[] least = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
        int count = 0;
        int at = 0;
        for (int[] triangle : triangles) {
            for (int vertex : triangle) {
                if (numbers[vertex] == 0) {
                    System.arraycopy(vertices.get(vertex), 0, xyz, 3 * count, 3);
                    for (int axis = 0; axis < 3; axis++) {
                        least[axis] = Math.min(least[axis], vertices.get(vertex)[axis]);
                    }
                    numbers[vertex] = ++count;
                }
                corners[at++] = numbers[vertex] - 1;
            }
        }
        for (int i = 0; i < 3 * count; i++) {
            xyz[i] -= least[i % 3];
        }
        return new Mesh(name, title, Arrays.copyOf(xyz, 3 * count), corners);
    }
}
