package dev.calotte.sphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.geometry.TriangleNet;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class UpTest {

    private static SphereMesh mesh(Solid solid) {
        return SphereMesh.of(solid, new Breakdown(2, 1), Spacing.CHORD);
    }

    @ParameterizedTest
    @EnumSource(Solid.class)
    void anEdgeUpHasItsEndsOverTheStartRayAtOneHeight(Solid solid) {
        double[] xyz = mesh(solid).coordinates(Up.EDGE);
        Vector3D first = Places.point(xyz, solid.faceCorner(0, 0));
        Vector3D second = Places.point(xyz, solid.faceCorner(0, 1));
        assertThat(first.getZ()).isCloseTo(second.getZ(), within(1e-15)).isPositive();
        assertThat(first.getY()).isCloseTo(0, within(1e-15));
        assertThat(second.getY()).isCloseTo(0, within(1e-15));
        assertThat(second.getX()).isPositive();
    }

    @ParameterizedTest
    @EnumSource(Solid.class)
    void aFaceUpIsLevelAndACornerOfItIsOverTheStartRay(Solid solid) {
        double[] xyz = mesh(solid).coordinates(Up.FACE);
        Vector3D first = Places.point(xyz, solid.faceCorner(0, 0));
        assertThat(first.getY()).isCloseTo(0, within(1e-15));
        assertThat(first.getX()).isPositive();
        for (int k = 1; k < 3; k++) {
            double height = Places.point(xyz, solid.faceCorner(0, k)).getZ();
            assertThat(height).isCloseTo(first.getZ(), within(1e-15)).isPositive();
        }
    }

    @ParameterizedTest
    @CsvSource({
        "TETRAHEDRON, EDGE",
        "TETRAHEDRON, FACE",
        "OCTAHEDRON, EDGE",
        "OCTAHEDRON, FACE",
        "ICOSAHEDRON, EDGE",
        "ICOSAHEDRON, FACE"
    })
    void turningKeepsEveryDistanceAndTheHand(Solid solid, Up up) {
        SphereMesh mesh = mesh(solid);
        double[] before = mesh.coordinates(Up.VERTEX);
        double[] after = mesh.coordinates(up);
        int[] triangles = mesh.triangles();
        for (int h = 0; h < triangles.length; h++) {
            int p = triangles[h];
            int q = triangles[TriangleNet.after(h)];
            double distance = Vector3D.distance(Places.point(before, p), Places.point(before, q));
            assertThat(Vector3D.distance(Places.point(after, p), Places.point(after, q)))
                    .isCloseTo(distance, within(1e-15));
        }
        Vector3D a = Places.point(after, triangles[0]);
        Vector3D b = Places.point(after, triangles[1]);
        assertThat(a.dotProduct(b.crossProduct(Places.point(after, triangles[2]))))
                .isPositive();
    }
}
