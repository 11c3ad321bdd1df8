package dev.calotte.sphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class OrbitsTest {

    private static Web web(Solid solid, int b, int c) {
        Breakdown breakdown = new Breakdown(b, c);
        Sites sites = new Sites(solid, new Lattice(breakdown));
        return new Web(new VertexOrbits(sites, breakdown.classNumber() != 3), sites);
    }

    @ParameterizedTest
    @EnumSource(Solid.class)
    void aMotionIsWhatItDoesToTheCorners(Solid solid) {
        for (int face = 0; face < solid.faceCount(); face++) {
            for (int start = 0; start < 3; start++) {
                for (boolean mirrored : new boolean[] {false, true}) {
                    Motion motion = new Motion(solid, face, start, mirrored);
                    assertThat(motion.mirrors()).isEqualTo(mirrored);
                    assertThat(motion.face(0)).isEqualTo(face);
                    assertThat(motion.place(0, 0)).isEqualTo(start);
                    checkFaces(solid, motion);
                }
            }
        }
    }

    private static void checkFaces(Solid solid, Motion motion) {
        TreeSet<Integer> reached = new TreeSet<>();
        for (int f = 0; f < solid.faceCount(); f++) {
            reached.add(motion.face(f));
            for (int k = 0; k < 3; k++) {
                Vector3D from = solid.corner(solid.faceCorner(f, k));
                Vector3D to = solid.corner(solid.faceCorner(motion.face(f), motion.place(f, k)));
                assertThat(motion.apply(from).distance(to)).isLessThan(1e-15 * 4);
                assertThat(motion.undo(to).distance(from)).isLessThan(1e-15 * 4);
            }
        }
        assertThat(reached).hasSize(solid.faceCount());
    }

    /** Rows: freedoms 0, 1 and 2, orbits of struts and panels, counted by hand on a sketch of a face. */
    @ParameterizedTest
    @CsvSource({
        "ICOSAHEDRON, 1, 0, 1, 0, 0, 1, 1",
        "ICOSAHEDRON, 2, 0, 2, 0, 0, 2, 2",
        "ICOSAHEDRON, 3, 0, 2, 1, 0, 4, 3",
        "ICOSAHEDRON, 4, 0, 2, 2, 0, 6, 5",
        "OCTAHEDRON, 6, 0, 3, 3, 1, 12, 9",
        "TETRAHEDRON, 1, 1, 2, 0, 0, 2, 1",
        "ICOSAHEDRON, 2, 2, 3, 1, 0, 5, 3",
        "ICOSAHEDRON, 2, 1, 1, 0, 1, 4, 3",
        "TETRAHEDRON, 3, 1, 1, 0, 2, 7, 5"
    })
    void orbitsAreAsManyAsCountedByHand(
            Solid solid, int b, int c, int fixed, int onMirror, int free, int struts, int panels) {
        Web web = web(solid, b, c);
        int[] found = new int[3];
        for (int o = 0; o < web.orbits().count(); o++) {
            found[web.orbits().freedom(o).dimension()]++;
        }
        assertThat(found).containsExactly(fixed, onMirror, free);
        assertThat(web.struts()).hasSize(struts);
        assertThat(web.panels()).hasSize(panels);
    }

    /** An orbit has as many vertices as motions, divided by those that leave one where it is. */
    @ParameterizedTest
    @CsvSource({"ICOSAHEDRON, 6, 0, 120", "OCTAHEDRON, 3, 3, 48", "TETRAHEDRON, 4, 0, 24", "OCTAHEDRON, 4, 2, 24"})
    void orbitsShareOutTheVertices(Solid solid, int b, int c, int motions) {
        VertexOrbits orbits = web(solid, b, c).orbits();
        assertThat(orbits.motionCount()).isEqualTo(motions);
        int[] sizes = new int[orbits.count()];
        int all = solid.faceCount() * (b * b + b * c + c * c) / 2 + 2;
        for (int v = 0; v < all; v++) {
            sizes[orbits.of(v)]++;
        }
        for (int o = 0; o < sizes.length; o++) {
            int representative = orbits.representative(o);
            assertThat(orbits.of(representative)).isEqualTo(o);
            long stays = 0;
            for (int g = 0; g < motions; g++) {
                stays += orbits.image(g, representative) == representative ? 1 : 0;
            }
            assertThat(sizes[o] * stays).isEqualTo(motions);
            int dimension = orbits.freedom(o).dimension();
            assertThat(dimension)
                    .isEqualTo(
                            stays == 1
                                    ? 2
                                    : stays == 2 && orbits.freedom(o).normal().getNorm() > 0 ? 1 : 0);
        }
        assertThat(Arrays.stream(sizes).sum()).isEqualTo(all);
    }

    @ParameterizedTest
    @CsvSource({"ICOSAHEDRON, 5, 0", "OCTAHEDRON, 2, 2", "TETRAHEDRON, 3, 1", "TETRAHEDRON, 6, 0"})
    void aPlacedMeshIsSpreadFromItsRepresentatives(Solid solid, int b, int c) {
        Web web = web(solid, b, c);
        double[] xyz = SphereMesh.of(solid, new Breakdown(b, c), Spacing.CHORD).coordinates(Up.VERTEX);
        assertThat(web.orbits().spread(Pose.of(web, xyz).points())).containsExactly(xyz, within(1e-14));
    }

    @Test
    void onAMirrorAPointStaysOnItsGreatCircle() {
        Web web = web(Solid.ICOSAHEDRON, 3, 0);
        Freedom freedom = web.orbits().freedom(1);
        Vector3D point = new Vector3D(0.3, 0, 0.9).normalize();
        assertThat(freedom.dimension()).isEqualTo(1);
        assertThat(Math.abs(freedom.normal().getY())).isEqualTo(1, within(1e-14));
        assertThat(freedom.settle(new Vector3D(0.6, 0.1, 1.8)).distance(point)).isLessThan(1e-14);
        Vector3D direction = freedom.direction(0, point);
        assertThat(direction.getNorm()).isEqualTo(1, within(1e-14));
        assertThat(direction.dotProduct(point)).isEqualTo(0, within(1e-14));
        assertThat(direction.getY()).isEqualTo(0, within(1e-14));
    }

    @Test
    void onTheSphereTwoDirectionsAreAtRightAngles() {
        Freedom freedom = Freedom.of(List.of(new Motion(Solid.ICOSAHEDRON, 0, 0, false)));
        Vector3D point = new Vector3D(1, 2, 3).normalize();
        Vector3D one = freedom.direction(0, point);
        Vector3D other = freedom.direction(1, point);
        assertThat(freedom.dimension()).isEqualTo(2);
        assertThat(one.getNorm()).isEqualTo(1, within(1e-14));
        assertThat(other.getNorm()).isEqualTo(1, within(1e-14));
        assertThat(one.dotProduct(other)).isEqualTo(0, within(1e-14));
        assertThat(one.dotProduct(point)).isEqualTo(0, within(1e-14));
        assertThat(other.dotProduct(point)).isEqualTo(0, within(1e-14));
        assertThat(freedom.settle(new Vector3D(2, 4, 6)).distance(point)).isLessThan(1e-15);
    }
}
