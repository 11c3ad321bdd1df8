package dev.calotte.dxf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.calotte.document.Circle;
import dev.calotte.document.Document;
import dev.calotte.document.Mesh;
import dev.calotte.document.Operation;
import dev.calotte.document.Picture;
import dev.calotte.document.Polyline;
import dev.calotte.document.Wireframe;
import dev.calotte.testing.CountingStream;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DxfRefusalTest {

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void refusesNumbersThatAreNotFinite(double wrong) {
        refuses(
                Samples.drawing(Polyline.closed(
                        Operation.CUT_OUTER, new double[] {0, 0, 10, 0, 5, 8}, new double[] {0, wrong, 0})),
                "layer CUT_OUTER has a bulge that is no number");
        refuses(Samples.drawing(Polyline.open(Operation.SCORE, 0, 0, wrong, 1)), "layer SCORE has a place that is no");
        refuses(Samples.drawing(new Circle(Operation.DRILL, 0, wrong, 1)), "layer DRILL has a place that is no");
        refuses(Samples.drawing(new Circle(Operation.DRILL, 0, 0, wrong)), "layer DRILL has a place that is no");
        refuses(
                Samples.wireframe(new Wireframe.Layer("HUBS", Wireframe.Sort.POINTS, 0, 0, wrong)),
                "layer HUBS has a place that is no number, x 0.0, y 0.0, z " + wrong);
    }

    @Test
    void refusesSidesWithoutLengthAfterRounding() {
        refuses(
                Samples.drawing(Polyline.closed(Operation.CUT_OUTER, 0, 0, 10, 0, 10.0000004, 0, 5, 8)),
                "layer CUT_OUTER has a side without length at x 10.0000004, y 0.0");
    }

    @Test
    void keepsSidesOfTheLeastLength() throws IOException {
        assertThat(Samples.bytes(
                        Samples.drawing(Polyline.closed(Operation.CUT_OUTER, 0, 0, 10, 0, 10.000001, 0, 5, 8))))
                .isNotEmpty();
    }

    @Test
    void refusesOutlinesThatRepeatTheirFirstCorner() {
        refuses(
                Samples.drawing(Polyline.closed(Operation.CUT_OUTER, 0, 0, 10, 0, 5, 8, 0, 0)),
                "layer CUT_OUTER has a side without length at x 0.0, y 0.0");
    }

    @Test
    void refusesWhatWouldBeCutTwice() {
        refuses(
                Samples.drawing(
                        Polyline.closed(Operation.CUT_OUTER, 0, 0, 10, 0, 5, 8),
                        Polyline.closed(Operation.CUT_OUTER, 6, 0, 2, 0, 4, -5)),
                ": an edge would be cut twice, between P1 and P1 at x 0 mm, y 0 mm");
    }

    @Test
    void keepsLinesThatEndWhereTheyBegan() throws IOException {
        assertThat(Samples.bytes(Samples.drawing(Polyline.open(Operation.ENGRAVE, 0, 0, 10, 0, 5, 8, 0, 0))))
                .isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, 4e-7})
    void refusesCirclesWithoutRadius(double radius) {
        refuses(Samples.drawing(new Circle(Operation.DRILL, 1, 2, radius)), "layer DRILL has a circle without radius");
    }

    @Test
    void refusesLinesAndFacesWithASideWithoutLength() {
        refuses(
                Samples.wireframe(new Wireframe.Layer("S1", Wireframe.Sort.LINES, 1, 2, 3, 1, 2, 3)),
                "layer S1 has a side without length at x 1.0, y 2.0");
        refuses(
                Samples.wireframe(new Wireframe.Layer("P1", Wireframe.Sort.FACES, 1, 2, 3, 4, 5, 6, 1, 2, 3)),
                "layer P1 has a side without length at x 1.0, y 2.0");
    }

    @ParameterizedTest
    @ValueSource(strings = {"ENTITIES", "LAYER", "EOF", "POLYLINE"})
    void refusesLayersNamedLikeAWordOfTheFormat(String name) {
        refuses(
                Samples.wireframe(new Wireframe.Layer(name, Wireframe.Sort.POINTS, 0, 0, 0)),
                "layer " + name + " has a name that is a word of the format");
    }

    @Test
    void refusesDocumentsItDoesNotAccept() {
        Picture picture = new Picture("drawings/plan", "", 10, 10, List.of());
        double[] xyz = {0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0, 1};
        Mesh mesh = new Mesh("jigs/H1", "", xyz, new int[] {0, 2, 1, 0, 1, 3, 1, 2, 3, 2, 0, 3});
        assertThat(List.<Document>of(picture, mesh)).noneMatch(new DxfExporter()::accepts);
        refuses(picture, "drawings/plan is neither");
        refuses(mesh, "jigs/H1 is neither");
    }

    @Test
    void acceptsDrawingsAndWireframes() {
        assertThat(Samples.all()).allMatch(new DxfExporter()::accepts);
    }

    private static void refuses(Document document, String why) {
        CountingStream out = new CountingStream();
        assertThatThrownBy(() -> new DxfExporter().write(document, out))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(document.name())
                .hasMessageContaining(why);
        assertThat(out.count()).as("bytes before the refusal").isZero();
    }
}
