package dev.calotte.stl;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.document.Document;
import dev.calotte.document.Mesh;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.BoundarySource3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.io.core.input.StreamGeometryInput;
import org.apache.commons.geometry.io.euclidean.threed.IO3D;
import org.apache.commons.geometry.io.euclidean.threed.stl.BinaryStlFacetDefinition;
import org.apache.commons.numbers.core.Precision;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class StlExporterTest {

    static List<Document> documents() {
        return Samples.all();
    }

    @Test
    void solidReadsBackWithItsVolume() throws IOException {
        assertThat(volume(Samples.tetrahedron())).isCloseTo(5000, within(1e-6));
        assertThat(volume(Samples.hippedRoof(12))).isCloseTo((40 * 30 / 3.0 + 12 * 30 / 6.0) * 25, within(1e-6));
    }

    @Test
    void cornersReadBackInTheOrderOfTheMesh() throws IOException {
        Mesh mesh = Samples.hippedRoof(12.3);
        List<BinaryStlFacetDefinition> facets = Facets.of(mesh).list();
        assertThat(facets).hasSize(mesh.triangleCount());
        for (int i = 0; i < facets.size(); i++) {
            for (int k = 0; k < 3; k++) {
                assertThat(facets.get(i).getVertices().get(k)).isEqualTo(single(mesh, mesh.corner(i, k)));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("documents")
    void normalsArePerpendicularToTheWrittenCornersByTheRightHand(Document document) throws IOException {
        assertThat(Facets.of(document).list()).allSatisfy(facet -> {
            Vector3D a = facet.getVertices().get(0);
            Vector3D ab = a.vectorTo(facet.getVertices().get(1));
            Vector3D ac = a.vectorTo(facet.getVertices().get(2));
            assertThat(ab.cross(ac).normalize().distance(facet.getNormal())).isLessThan(1e-7);
        });
    }

    @ParameterizedTest
    @MethodSource("documents")
    void lengthIsTheOneThatTheCountAnnounces(Document document) throws IOException {
        byte[] bytes = Samples.bytes(document);
        Facets facets = Facets.read(bytes);
        assertThat(facets.announced()).isEqualTo(facets.list().size()).isEqualTo((bytes.length - 84) / 50);
        assertThat((bytes.length - 84) % 50).isZero();
        assertThat(facets.list()).allMatch(facet -> facet.getAttributeValue() == 0);
    }

    @Test
    void headerNamesUnitAndPartAndDoesNotLookLikeTheTextVariant() throws IOException {
        String header = header(Samples.tetrahedron());
        assertThat(header)
                .hasSize(80)
                .startsWith("units=mm part=jigs/H1 size=30x40x25 by=calotte\0")
                .doesNotStartWith("solid");
        assertThat(header.substring(46)).containsOnlyOnce("\0".repeat(34));
    }

    @Test
    void headerKeepsTheEndOfALongNameAndNothingButAscii() throws IOException {
        assertThat(header(Samples.named("a/" + "b".repeat(60) + "/H1")))
                .isEqualTo("units=mm part=" + "b".repeat(38) + "/H1 size=30x40x25 by=calotte");
        assertThat(header(Samples.named("jigs/\u00d8 8")))
                .startsWith("units=mm part=jigs/__8 size=30x40x25 by=calotte\0");
    }

    @Test
    void facetsThatLoseTheirAreaAreLeftOutWhereTheSurfaceStaysClosed() throws IOException {
        assertThat(Facets.of(Samples.hippedRoof(1e-9)).list()).hasSize(6);
        assertThat(volume(Samples.hippedRoof(1e-9))).isCloseTo(10_000, within(1e-6));
    }

    @Test
    void negativeZeroIsWrittenAsZero() throws IOException {
        double[] xyz = {-0.0, 0, 0, 30, -0.0, 0, 0, 40, -0.0, 10, 10, 25};
        byte[] written = Samples.bytes(Samples.mesh(xyz, 0, 2, 1, 0, 1, 3, 1, 2, 3, 2, 0, 3));
        assertThat(written).isEqualTo(Samples.bytes(Samples.tetrahedron()));
    }

    private static Vector3D single(Mesh mesh, int vertex) {
        return Vector3D.of((float) mesh.at(vertex, 0), (float) mesh.at(vertex, 1), (float) mesh.at(vertex, 2));
    }

    private static String header(Document document) throws IOException {
        return Facets.of(document).header();
    }

    private static double volume(Document document) throws IOException {
        var input = new StreamGeometryInput(new ByteArrayInputStream(Samples.bytes(document)), "part.stl", null);
        BoundarySource3D read = IO3D.read(input, null, Precision.doubleEquivalenceOfEpsilon(1e-9));
        return read.toTree().getSize();
    }
}
