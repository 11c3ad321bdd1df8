package dev.calotte.dxf;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.document.Wireframe;
import java.io.IOException;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class DxfWireframeTest {

    @Test
    void hubsArePointsAndStrutsAreLines() throws IOException {
        Tags tags = Tags.of(Samples.tetrahedron());
        assertThat(tags.entries("POINT"))
                .hasSize(4)
                .allMatch(point -> point.text(8).equals("HUBS"));
        assertThat(tags.entries("LINE"))
                .hasSize(6)
                .allMatch(line -> line.text(8).equals("STRUTS-S1"));
    }

    @Test
    void lineRunsFromItsFirstPointToItsSecond() throws IOException {
        Tags.Entry line = Tags.of(Samples.lines()).entries("LINE").get(1);
        assertThat(List.of(10, 20, 30, 11, 21, 31))
                .extracting(line::number)
                .containsExactly(0.0, 0.0, 0.0, 0.0, 0.0, 7.25);
    }

    @Test
    void faceOfThreeCornersRepeatsTheLast() throws IOException {
        Tags.Entry face = Tags.of(Samples.faces()).entries("3DFACE").get(0);
        assertThat(List.of(10, 11, 12, 13)).extracting(face::number).containsExactly(0.0, 30.0, 10.0, 10.0);
        assertThat(List.of(30, 31, 32, 33)).extracting(face::number).containsExactly(0.0, 0.0, 25.0, 25.0);
    }

    @Test
    void layersWithoutElementsAreNotDeclared() throws IOException {
        assertThat(Tags.of(Samples.tetrahedron()).entries("LAYER"))
                .extracting(layer -> layer.text(2))
                .containsExactly("0", "HUBS", "STRUTS-S1");
    }

    @Test
    void coloursOfNeighbouringLayersDiffer() throws IOException {
        Wireframe.Layer[] layers = IntStream.range(0, 24)
                .mapToObj(i -> new Wireframe.Layer("STRUTS-S" + i, Wireframe.Sort.POINTS, i, 0, 0))
                .toArray(Wireframe.Layer[]::new);
        assertThat(Tags.of(Samples.wireframe(layers)).entries("LAYER"))
                .extracting(layer -> layer.text(62))
                .doesNotHaveDuplicates()
                .hasSize(25);
    }

    @Test
    void layerThatComesAgainIsDeclaredOnce() throws IOException {
        Tags tags = Tags.of(Samples.wireframe(
                new Wireframe.Layer("A", Wireframe.Sort.POINTS, 0, 0, 0),
                new Wireframe.Layer("A", Wireframe.Sort.LINES, 0, 0, 0, 1, 0, 0)));
        assertThat(tags.entries("LAYER")).extracting(layer -> layer.text(2)).containsExactly("0", "A");
    }
}
