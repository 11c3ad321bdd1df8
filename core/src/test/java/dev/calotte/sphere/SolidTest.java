package dev.calotte.sphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class SolidTest {

    @ParameterizedTest
    @CsvSource({"TETRAHEDRON, 4, 6, 4, 3, 1", "OCTAHEDRON, 6, 12, 8, 4, 2", "ICOSAHEDRON, 12, 30, 20, 5, 3"})
    void solidsHaveTheirCounts(Solid solid, int corners, int edges, int faces, int valence, int rows) {
        assertThat(solid.cornerCount()).isEqualTo(corners);
        assertThat(solid.edgeCount()).isEqualTo(edges);
        assertThat(solid.faceCount()).isEqualTo(faces);
        assertThat(solid.valence()).isEqualTo(valence);
        assertThat(solid.rowsPerFrequency()).isEqualTo(rows);
    }

    @ParameterizedTest
    @EnumSource(Solid.class)
    void cornersLieOnTheUnitSphere(Solid solid) {
        for (int i = 0; i < solid.cornerCount(); i++) {
            assertThat(solid.corner(i).getNorm()).isCloseTo(1, within(1e-15));
        }
    }

    @ParameterizedTest
    @EnumSource(Solid.class)
    void aCornerIsUpAndTheNextOneIsOverTheStartRay(Solid solid) {
        assertThat(solid.corner(0)).isEqualTo(Vector3D.PLUS_K);
        assertThat(solid.corner(1).getY()).isZero();
        assertThat(solid.corner(1).getX()).isPositive();
    }

    @ParameterizedTest
    @EnumSource(Solid.class)
    void everySideOfAFaceSpansTheCentralAngle(Solid solid) {
        for (int f = 0; f < solid.faceCount(); f++) {
            for (int k = 0; k < 3; k++) {
                Vector3D from = solid.corner(solid.faceCorner(f, k));
                Vector3D to = solid.corner(solid.faceCorner(f, (k + 1) % 3));
                assertThat(Vector3D.angle(from, to)).isCloseTo(solid.centralAngleRad(), within(1e-14));
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Solid.class)
    void facesAreCounterClockwiseSeenFromOutside(Solid solid) {
        for (int f = 0; f < solid.faceCount(); f++) {
            Vector3D a = solid.corner(solid.faceCorner(f, 0));
            Vector3D b = solid.corner(solid.faceCorner(f, 1));
            Vector3D c = solid.corner(solid.faceCorner(f, 2));
            assertThat(a.dotProduct(b.crossProduct(c))).isPositive();
        }
    }

    @ParameterizedTest
    @EnumSource(Solid.class)
    void facesAcrossASideShareItsEdge(Solid solid) {
        for (int f = 0; f < solid.faceCount(); f++) {
            for (int k = 0; k < 3; k++) {
                int across = solid.neighbour(f, k);
                int place = solid.place(across, solid.faceCorner(f, (k + 1) % 3));
                assertThat(solid.neighbour(across, place)).isEqualTo(f);
                assertThat(solid.edge(across, place)).isEqualTo(solid.edge(f, k));
                assertThat(solid.edgeEnd(solid.edge(f, k), 0)).isLessThan(solid.edgeEnd(solid.edge(f, k), 1));
            }
        }
    }

    @Test
    void centralAnglesAreTheKnownOnes() {
        assertThat(Solid.TETRAHEDRON.centralAngleRad()).isCloseTo(StrictMath.acos(-1.0 / 3), within(1e-15));
        assertThat(Solid.OCTAHEDRON.centralAngleRad()).isCloseTo(Math.PI / 2, within(1e-15));
        assertThat(Solid.ICOSAHEDRON.centralAngleRad()).isCloseTo(StrictMath.atan(2), within(1e-15));
    }
}
