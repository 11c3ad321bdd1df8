package dev.calotte.dome;

import dev.calotte.geometry.TriangleNet;
import dev.calotte.sphere.SphereMesh;
import java.util.Arrays;

/** The whole unit sphere with its crown up, and how many struts each vertex is away from the crown. */
final class Ball {

    /** Heights that differ by less than this part of the radius are one height. */
    static final double LEVEL = 1e-9;

    final SphereMesh mesh;
    final double[] xyz;
    final int[] triangles;
    final int[] rows;

    Ball(DomeSpec spec) {
        this.mesh = SphereMesh.of(spec.solid(), spec.breakdown(), spec.spacing(), spec.fitting());
        this.xyz = mesh.coordinates(spec.up());
        this.triangles = mesh.triangles();
        this.rows = rows(new TriangleNet(mesh.vertexCount(), triangles));
    }

    /** Breadth first from the highest vertices. */
    private int[] rows(TriangleNet net) {
        double top = Double.NEGATIVE_INFINITY;
        for (int v = 0; v < net.vertexCount(); v++) {
            top = Math.max(top, z(v));
        }
        int[] found = new int[net.vertexCount()];
        Arrays.fill(found, -1);
        int[] queue = new int[net.vertexCount()];
        int end = 0;
        for (int v = 0; v < net.vertexCount(); v++) {
            if (z(v) > top - LEVEL) {
                found[v] = 0;
                queue[end++] = v;
            }
        }
        for (int next = 0; next < end; next++) {
            int first = net.spoke(queue[next]);
            int h = first;
            do {
                int v = net.end(h);
                if (found[v] < 0) {
                    found[v] = found[queue[next]] + 1;
                    queue[end++] = v;
                }
                h = net.turn(h);
            } while (h != first);
        }
        return found;
    }

    double z(int vertex) {
        return xyz[3 * vertex + 2];
    }

    /** The lowest height of a triangle's corners. */
    double lowest(int triangle) {
        int i = 3 * triangle;
        return Math.min(z(triangles[i]), Math.min(z(triangles[i + 1]), z(triangles[i + 2])));
    }

    /** The last row that a triangle reaches. */
    int lastRow(int triangle) {
        int i = 3 * triangle;
        return Math.max(rows[triangles[i]], Math.max(rows[triangles[i + 1]], rows[triangles[i + 2]]));
    }
}
