package dev.calotte.sphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class SphereMeshTest {

    private static final int[][] STEPS = {{1, 0}, {2, 0}, {5, 0}, {8, 0}, {0, 4}, {1, 1}, {3, 3}, {2, 1}, {1, 2}, {4, 2}
    };

    static Stream<Arguments> divided() {
        return Stream.of(Solid.values())
                .flatMap(solid -> Stream.of(STEPS).map(s -> Arguments.of(solid, new Breakdown(s[0], s[1]))));
    }

    @ParameterizedTest
    @MethodSource("divided")
    void noTwoVerticesHaveOneSite(Solid solid, Breakdown breakdown) {
        SphereMesh mesh = SphereMesh.of(solid, breakdown, Spacing.CHORD);
        TreeSet<String> sites = new TreeSet<>();
        for (int v = 0; v < mesh.vertexCount(); v++) {
            sites.add(mesh.site(v).toString());
        }
        assertThat(sites).hasSize(mesh.vertexCount());
    }

    @ParameterizedTest
    @MethodSource("divided")
    void everyVertexLiesWhereItsSiteSays(Solid solid, Breakdown breakdown) {
        SphereMesh mesh = SphereMesh.of(solid, breakdown, Spacing.CHORD);
        double[] xyz = mesh.coordinates(Up.VERTEX);
        for (int v = 0; v < mesh.vertexCount(); v++) {
            Vector3D expected = Places.chord(solid, mesh.site(v));
            assertThat(Vector3D.distance(Places.point(xyz, v), expected)).isLessThan(1e-15);
        }
    }

    @ParameterizedTest
    @MethodSource("divided")
    void weightsOfAFaceAreAboveNoughtAndAddUp(Solid solid, Breakdown breakdown) {
        SphereMesh mesh = SphereMesh.of(solid, breakdown, Spacing.CHORD);
        for (int v = 0; v < mesh.vertexCount(); v++) {
            if (mesh.site(v) instanceof Site.InFace site) {
                assertThat(Math.min(site.a(), Math.min(site.b(), site.c()))).isPositive();
                assertThat((long) site.a() + site.b() + site.c()).isEqualTo(breakdown.triangulationNumber());
            }
            if (mesh.site(v) instanceof Site.OnEdge site) {
                assertThat(site.from()).isLessThan(site.to());
                assertThat(site.step()).isBetween(1, site.parts() - 1);
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Solid.class)
    void equalArcsDivideTheEdges(Solid solid) {
        for (Spacing spacing : new Spacing[] {Spacing.ARC, Spacing.MIDARC}) {
            SphereMesh mesh = SphereMesh.of(solid, Breakdown.of(8), spacing);
            double[] xyz = mesh.coordinates(Up.VERTEX);
            for (int v = 0; v < mesh.vertexCount(); v++) {
                if (mesh.site(v) instanceof Site.OnEdge site) {
                    Vector3D expected = Places.onArc(solid, site);
                    assertThat(Vector3D.distance(Places.point(xyz, v), expected))
                            .isLessThan(1e-14);
                }
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Solid.class)
    void lowFrequenciesAreTheSameInEverySpacing(Solid solid) {
        for (int n = 1; n <= 2; n++) {
            double[] chord =
                    SphereMesh.of(solid, Breakdown.of(n), Spacing.CHORD).coordinates(Up.VERTEX);
            assertThat(SphereMesh.of(solid, Breakdown.of(n), Spacing.ARC).coordinates(Up.VERTEX))
                    .containsExactly(chord, within(1e-15));
            assertThat(SphereMesh.of(solid, Breakdown.of(n), Spacing.MIDARC).coordinates(Up.VERTEX))
                    .containsExactly(chord, within(1e-15));
        }
    }

    /** At frequency 3 the flat window and the one on the sphere have the same centre; above it they part a little. */
    @Test
    void innerPointsOfAnArcSpacingAreNearTheFlatWindows() {
        assertThat(fromFlatWindow(3, Spacing.ARC)).isLessThan(1e-14);
        for (int n = 4; n <= 8; n++) {
            assertThat(fromFlatWindow(n, Spacing.ARC)).isBetween(1e-9, 8e-5);
            assertThat(fromFlatWindow(n, Spacing.CHORD)).isGreaterThan(1e-3);
        }
    }

    private static double fromFlatWindow(int n, Spacing spacing) {
        return Places.furthestFromFlatWindow(SphereMesh.of(Solid.ICOSAHEDRON, Breakdown.of(n), spacing));
    }

    @ParameterizedTest
    @EnumSource(Solid.class)
    void arraysHandedOutAreCopies(Solid solid) {
        SphereMesh mesh = SphereMesh.of(solid, Breakdown.of(2), Spacing.CHORD);
        mesh.coordinates(Up.VERTEX)[0] = 9;
        mesh.triangles()[0] = 9;
        assertThat(mesh.coordinates(Up.VERTEX)[0]).isNotEqualTo(9);
        assertThat(mesh.triangles()[0]).isZero();
        assertThat(mesh.solid()).isEqualTo(solid);
        assertThat(mesh.triangleCount()).isEqualTo(4 * solid.faceCount());
    }
}
