package dev.calotte.stl.body;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.document.Mesh;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** Whether a mesh is one closed body that faces outwards and does not cross itself, found without its maker's help. */
final class Sound {

    private final Mesh mesh;
    private final List<Vector3D[]> facets = new ArrayList<>();

    private Sound(Mesh mesh) {
        this.mesh = mesh;
        for (int i = 0; i < mesh.triangleCount(); i++) {
            facets.add(new Vector3D[] {corner(i, 0), corner(i, 1), corner(i, 2)});
        }
    }

    static void check(Mesh mesh) {
        Sound sound = new Sound(mesh);
        sound.checkEdges();
        sound.checkOnePart();
        assertThat(volume(mesh)).as(mesh.name()).isPositive();
        for (int axis = 0; axis < 3; axis++) {
            assertThat(least(mesh, axis)).as(mesh.name()).isZero();
        }
        assertThat(sound.crossings()).as("crossing facets of " + mesh.name()).isEmpty();
    }

    private Vector3D corner(int facet, int k) {
        int vertex = mesh.corner(facet, k);
        // as the file holds it
        return new Vector3D((float) mesh.at(vertex, 0), (float) mesh.at(vertex, 1), (float) mesh.at(vertex, 2));
    }

    static List<Vector3D[]> facets(Mesh mesh) {
        return new Sound(mesh).facets;
    }

    /** By the divergence theorem. */
    static double volume(Mesh mesh) {
        double sum = 0;
        for (Vector3D[] facet : facets(mesh)) {
            sum += facet[0].dotProduct(facet[1].crossProduct(facet[2])) / 6;
        }
        return sum;
    }

    static Vector3D normal(Vector3D... facet) {
        return facet[1].subtract(facet[0]).crossProduct(facet[2].subtract(facet[0]));
    }

    static double least(Mesh mesh, int axis) {
        double least = Double.POSITIVE_INFINITY;
        for (int vertex = 0; vertex < mesh.vertexCount(); vertex++) {
            least = Math.min(least, mesh.at(vertex, axis));
        }
        return least;
    }

    static double most(Mesh mesh, int axis) {
        double most = Double.NEGATIVE_INFINITY;
        for (int vertex = 0; vertex < mesh.vertexCount(); vertex++) {
            most = Math.max(most, mesh.at(vertex, axis));
        }
        return most;
    }

    /** Every edge is run along once in either direction, which closes the surface. */
    private void checkEdges() {
        List<Long> there = new ArrayList<>();
        List<Long> back = new ArrayList<>();
        for (int i = 0; i < mesh.triangleCount(); i++) {
            for (int k = 0; k < 3; k++) {
                long from = mesh.corner(i, k);
                long to = mesh.corner(i, (k + 1) % 3);
                there.add(from << 32 | to);
                back.add(to << 32 | from);
            }
        }
        there.sort(Comparator.naturalOrder());
        back.sort(Comparator.naturalOrder());
        assertThat(there).doesNotHaveDuplicates().isEqualTo(back);
    }

    private void checkOnePart() {
        boolean[] reached = new boolean[mesh.vertexCount()];
        reached[mesh.corner(0, 0)] = true;
        boolean grown = true;
        while (grown) {
            grown = false;
            for (int i = 0; i < mesh.triangleCount(); i++) {
                boolean some = reached[mesh.corner(i, 0)] || reached[mesh.corner(i, 1)] || reached[mesh.corner(i, 2)];
                for (int k = 0; some && k < 3; k++) {
                    grown |= !reached[mesh.corner(i, k)];
                    reached[mesh.corner(i, k)] = true;
                }
            }
        }
        assertThat(reached).as("parts of " + mesh.name()).doesNotContain(false);
    }

    /** Pairs of facets without a common corner of which an edge of the one passes through the other. */
    List<String> crossings() {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < facets.size(); i++) {
            order.add(i);
        }
        order.sort(Comparator.comparingDouble(i -> low(i, 0)));
        List<String> found = new ArrayList<>();
        for (int a = 0; a < order.size(); a++) {
            int one = order.get(a);
            for (int b = a + 1; b < order.size() && low(order.get(b), 0) <= high(one, 0); b++) {
                int other = order.get(b);
                if (near(one, other) && !touching(one, other) && (pierces(one, other) || pierces(other, one))) {
                    found.add(one + " and " + other);
                }
            }
        }
        return found;
    }

    private double low(int facet, int axis) {
        Vector3D[] f = facets.get(facet);
        return Math.min(Math.min(f[0].toArray()[axis], f[1].toArray()[axis]), f[2].toArray()[axis]);
    }

    private double high(int facet, int axis) {
        Vector3D[] f = facets.get(facet);
        return Math.max(Math.max(f[0].toArray()[axis], f[1].toArray()[axis]), f[2].toArray()[axis]);
    }

    private boolean near(int one, int other) {
        for (int axis = 1; axis < 3; axis++) {
            if (low(one, axis) > high(other, axis) || low(other, axis) > high(one, axis)) {
                return false;
            }
        }
        return true;
    }

    private boolean touching(int one, int other) {
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                if (mesh.corner(one, i) == mesh.corner(other, j)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Whether an edge of one facet passes through the inside of another, by the signs of five volumes. */
    private boolean pierces(int one, int other) {
        Vector3D[] f = facets.get(other);
        for (int k = 0; k < 3; k++) {
            Vector3D p = facets.get(one)[k];
            Vector3D q = facets.get(one)[(k + 1) % 3];
            if (volume(f[0], f[1], f[2], p) * volume(f[0], f[1], f[2], q) < 0) {
                double a = volume(p, q, f[0], f[1]);
                double b = volume(p, q, f[1], f[2]);
                double c = volume(p, q, f[2], f[0]);
                if ((a > 0 && b > 0 && c > 0) || (a < 0 && b < 0 && c < 0)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Six times the volume of a tetrahedron; 0 below what single precision tells apart. */
    private static double volume(Vector3D a, Vector3D b, Vector3D c, Vector3D d) {
        double volume = b.subtract(a).crossProduct(c.subtract(a)).dotProduct(d.subtract(a));
        return Math.abs(volume) < 1e-6 ? 0 : volume;
    }

    /** The area of what looks up at a height. */
    static double levelMm2(Mesh mesh, double height) {
        return facets(mesh).stream()
                .filter(facet -> Stream.of(facet).allMatch(v -> Math.abs(v.getZ() - height) < 1e-3))
                .mapToDouble(facet -> normal(facet).getZ() / 2)
                .sum();
    }
}
