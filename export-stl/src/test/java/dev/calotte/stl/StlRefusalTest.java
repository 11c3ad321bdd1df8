package dev.calotte.stl;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.calotte.document.Document;
import dev.calotte.document.Drawing;
import dev.calotte.document.Mesh;
import dev.calotte.testing.CountingStream;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StlRefusalTest {

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, 1e39, -1e300})
    void refusesNumbersThatSinglePrecisionCannotHold(double wrong) {
        double[] xyz = {0, 0, 0, 30, 0, 0, 0, 40, 0, 10, 10, wrong};
        refuses(Samples.mesh(xyz, 0, 2, 1, 0, 1, 3, 1, 2, 3, 2, 0, 3), "the coordinate " + wrong);
    }

    @Test
    void refusesASurfaceThatLosesAFlatFacetAndIsOpenThere() {
        double[] xyz = {0, 0, 0, 30, 0, 0, 0, 40, 0, 10, 10, 25, 15, 0, 0};
        Mesh flatAtVertexFour = Samples.mesh(xyz, 0, 2, 1, 0, 1, 4, 0, 4, 3, 4, 1, 3, 1, 2, 3, 2, 0, 3);
        refuses(flatAtVertexFour, "the surface is open");
    }

    @Test
    void refusesSolidsThatGrowTogetherAlongAnEdge() {
        double[] xyz = {0, 0, 0, 30, 0, 0, 0, 40, 0, 10, 10, 25, 0, 1e-60, 0, 30, 1e-60, 0, 0, -40, 0, 10, -10, 25};
        Mesh two = Samples.mesh(xyz, 0, 2, 1, 0, 1, 3, 1, 2, 3, 2, 0, 3, 4, 5, 6, 4, 7, 5, 5, 7, 6, 6, 7, 4);
        refuses(two, "used twice the same way");
    }

    @Test
    void refusesASurfaceThatIsInsideOut() {
        double[] xyz = {0, 0, 0, 30, 0, 0, 0, 40, 0, 10, 10, 25};
        refuses(Samples.mesh(xyz, 0, 1, 2, 0, 3, 1, 1, 3, 2, 2, 3, 0), "the surface is inside out");
    }

    @Test
    void refusesASolidOfWhichNothingIsLeft() {
        refuses(Samples.tetrahedron(1e-60), "no facet has an area");
    }

    @Test
    void refusesDocumentsItDoesNotAccept() {
        Drawing drawing = new Drawing("panels/P1", "", 10, 10, List.of());
        assertThat(new StlExporter().accepts(drawing)).isFalse();
        refuses(drawing, "STL holds meshes; panels/P1 is none");
    }

    @Test
    void acceptsMeshes() {
        assertThat(new StlExporter().accepts(Samples.tetrahedron())).isTrue();
    }

    private static void refuses(Document document, String why) {
        CountingStream out = new CountingStream();
        assertThatThrownBy(() -> new StlExporter().write(document, out))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(document.name())
                .hasMessageContaining(why);
        assertThat(out.count()).as("bytes before the refusal").isZero();
    }
}
