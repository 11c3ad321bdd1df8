package dev.calotte.laws;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.quickhull3d.Point3d;
import com.github.quickhull3d.QuickHull3D;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import dev.calotte.sphere.Spacing;
import dev.calotte.sphere.SphereMesh;
import dev.calotte.sphere.Up;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The triangles of an icosahedron or octahedron are those of the convex hull of their vertices. */
class HullTest {

    @ParameterizedTest
    @CsvSource({
        "ICOSAHEDRON, 1, 0, CHORD",
        "ICOSAHEDRON, 2, 0, CHORD",
        "ICOSAHEDRON, 3, 0, ARC",
        "ICOSAHEDRON, 4, 0, MIDARC",
        "ICOSAHEDRON, 5, 0, CHORD",
        "ICOSAHEDRON, 8, 0, ARC",
        "ICOSAHEDRON, 1, 1, CHORD",
        "ICOSAHEDRON, 3, 3, CHORD",
        "ICOSAHEDRON, 2, 1, CHORD",
        "ICOSAHEDRON, 1, 2, CHORD",
        "ICOSAHEDRON, 5, 2, CHORD",
        "OCTAHEDRON, 2, 0, CHORD",
        "OCTAHEDRON, 5, 0, ARC",
        "OCTAHEDRON, 8, 0, MIDARC",
        "OCTAHEDRON, 2, 2, CHORD",
        "OCTAHEDRON, 3, 1, CHORD",
        "OCTAHEDRON, 2, 5, CHORD"
    })
    void trianglesAreThoseOfTheConvexHull(Solid solid, int b, int c, Spacing spacing) {
        SphereMesh mesh = SphereMesh.of(solid, new Breakdown(b, c), spacing);
        assertThat(triples(mesh.triangles())).containsExactlyElementsOf(hull(mesh.coordinates(Up.VERTEX)));
    }

    /** A hull of the tetrahedron's points has other triangles: some edges of the mesh are hollow. */
    @ParameterizedTest
    @CsvSource({"TETRAHEDRON, 4, 0, CHORD", "TETRAHEDRON, 4, 0, MIDARC", "TETRAHEDRON, 7, 0, ARC"})
    void aHollowMeshIsNotItsHull(Solid solid, int b, int c, Spacing spacing) {
        SphereMesh mesh = SphereMesh.of(solid, new Breakdown(b, c), spacing);
        assertThat(triples(mesh.triangles())).isNotEqualTo(hull(mesh.coordinates(Up.VERTEX)));
    }

    private static List<List<Integer>> hull(double[] xyz) {
        Point3d[] points = IntStream.range(0, xyz.length / 3)
                .mapToObj(i -> new Point3d(xyz[3 * i], xyz[3 * i + 1], xyz[3 * i + 2]))
                .toArray(Point3d[]::new);
        QuickHull3D hull = new QuickHull3D();
        hull.build(points);
        hull.triangulate();
        int[] numbers = hull.getVertexPointIndices();
        return triples(Arrays.stream(hull.getFaces())
                .flatMapToInt(Arrays::stream)
                .map(i -> numbers[i])
                .toArray());
    }

    /** Each from its lowest number, in order. */
    private static List<List<Integer>> triples(int[] corners) {
        Stream<List<Integer>> triples = IntStream.range(0, corners.length / 3).mapToObj(t -> {
            int k = IntStream.range(0, 3)
                    .boxed()
                    .min((i, j) -> Integer.compare(corners[3 * t + i], corners[3 * t + j]))
                    .orElseThrow();
            return List.of(corners[3 * t + k], corners[3 * t + (k + 1) % 3], corners[3 * t + (k + 2) % 3]);
        });
        return triples.sorted((p, q) -> p.toString().compareTo(q.toString())).toList();
    }
}
