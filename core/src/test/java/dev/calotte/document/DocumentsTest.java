package dev.calotte.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.calotte.document.Wireframe.Layer;
import dev.calotte.document.Wireframe.Sort;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class DocumentsTest {

    private static final double[] CORNERS = {0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0, 1};

    @Test
    void pathKnowsItsCorners() {
        Polyline path = Polyline.closed(Operation.CUT_OUTER, 0, 1, 2, 3, 4, 5);
        assertThat(path.isClosed()).isTrue();
        assertThat(path.operation()).isEqualTo(Operation.CUT_OUTER);
        assertThat(path.size()).isEqualTo(3);
        assertThat(new double[] {path.x(0), path.y(0), path.x(2), path.y(2)}).containsExactly(0, 1, 4, 5);
        assertThat(Polyline.open(Operation.SCORE, 0, 1, 2, 3).isClosed()).isFalse();
    }

    @Test
    void drawingTellsItsOperationsInWorkingOrder() {
        List<Shape> shapes = List.of(
                Polyline.open(Operation.REF, 0, 0, 1, 1),
                new Circle(Operation.DRILL, 1, 1, 1),
                Polyline.open(Operation.SCORE, 0, 0, 1, 1),
                new Circle(Operation.DRILL, 4, 1, 1));
        Drawing drawing = new Drawing("x", "x", 5, 5, List.of(new Drawing.Part("A", "", shapes)));
        assertThat(drawing.operations()).containsExactly(Operation.SCORE, Operation.DRILL, Operation.REF);
    }

    @Test
    void pathKeepsItsOwnCopy() {
        double[] xy = {0, 0, 1, 1};
        Polyline path = Polyline.open(Operation.SCORE, xy);
        xy[0] = 7;
        assertThat(path.x(0)).isZero();
    }

    @Test
    void pathOfTooFewCornersIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Polyline.closed(Operation.DRILL, 0, 0, 1, 1))
                .withMessageContaining("3 corners");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Polyline.open(Operation.DRILL, 0, 0))
                .withMessageContaining("2 corners");
        assertThatIllegalArgumentException().isThrownBy(() -> Polyline.open(Operation.DRILL, 0, 0, 1, 1, 2));
    }

    @ParameterizedTest
    @EnumSource(Sort.class)
    void layerCountsItsElements(Sort sort) {
        double[] xyz = new double[6 * sort.corners()];
        xyz[xyz.length - 1] = 9;
        Layer layer = new Layer("A-1_X", sort, xyz);
        assertThat(layer.size()).isEqualTo(2);
        assertThat(layer.at(1, sort.corners() - 1, 2)).isEqualTo(9);
        assertThat(layer.name()).isEqualTo("A-1_X");
        assertThat(layer.sort()).isEqualTo(sort);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "a", "A B", "Ä", "A23456789012345678901234567890123"})
    void layerNameOfOtherCharactersIsRefused(String name) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Layer(name, Sort.POINTS))
                .withMessageContaining(name);
    }

    @ParameterizedTest
    @EnumSource(Sort.class)
    void layerOfPartElementsIsRefused(Sort sort) {
        double[] xyz = new double[3 * sort.corners() + 1];
        assertThatIllegalArgumentException().isThrownBy(() -> new Layer("A", sort, xyz));
    }

    @Test
    void closedMeshIsTaken() {
        Mesh mesh = new Mesh("jigs/H1", "a jig", CORNERS, new int[] {0, 2, 1, 0, 1, 3, 1, 2, 3, 2, 0, 3});
        assertThat(mesh.triangleCount()).isEqualTo(4);
        assertThat(mesh.vertexCount()).isEqualTo(4);
        assertThat(mesh.corner(1, 2)).isEqualTo(3);
        assertThat(mesh.at(3, 2)).isEqualTo(1);
        assertThat(mesh.name() + mesh.title()).isEqualTo("jigs/H1a jig");
    }

    @Test
    void openMeshIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Mesh("jigs/H1", "", CORNERS, new int[] {0, 2, 1, 0, 1, 3, 1, 2, 3}))
                .withMessageContaining("jigs/H1 is open at triangle 0");
    }

    @Test
    void meshTurnedInsideOutInPlacesIsRefused() {
        int[] oneTurned = {0, 2, 1, 0, 1, 3, 1, 2, 3, 0, 2, 3};
        assertThatIllegalArgumentException().isThrownBy(() -> new Mesh("m", "", CORNERS, oneTurned));
    }

    @Test
    void recordsKeepTheirOwnCopies() {
        List<Layer> layers = new ArrayList<>();
        List<Drawing.Part> parts = new ArrayList<>();
        Wireframe wireframe = new Wireframe("w", "", layers);
        Drawing drawing = new Drawing("d", "", 1, 1, parts);
        layers.add(new Layer("A", Sort.POINTS));
        parts.add(new Drawing.Part("P1", "", List.of(new Circle(Operation.DRILL, 0, 0, 1))));
        assertThat(wireframe.layers()).isEmpty();
        assertThat(drawing.parts()).isEmpty();
    }

    @Test
    void picturesKeepTheirOwnCopies() {
        List<Double> xy = new ArrayList<>(List.of(0.0, 0.0, 1.0, 0.0, 0.0, 1.0));
        Picture.Facet facet = new Picture.Facet(xy, 1, Picture.Hatch.RISING, Picture.Weight.STRONG, "P1");
        xy.set(0, 7.0);
        List<Picture.Item> items = new ArrayList<>(List.of(facet));
        Picture picture = new Picture("plan", "", 100, 50, items);
        items.add(new Picture.Line(0, 0, 1, 1, Picture.Weight.FAINT, true));
        items.add(new Picture.Label("S1", 0, 0, 2.5, Picture.Anchor.MIDDLE));
        assertThat(facet.xy()).startsWith(0.0);
        assertThat(picture.items()).containsExactly(facet);
    }
}
