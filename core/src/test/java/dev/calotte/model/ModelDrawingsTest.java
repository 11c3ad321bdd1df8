package dev.calotte.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.document.Drawing;
import dev.calotte.document.Drawing.Part;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import dev.calotte.parts.Parts;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem;
import dev.calotte.sphere.Solid;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;

class ModelDrawingsTest {

    private static final Board BOARD = Board.of(600, 300, 3, 0.15);
    private static final ModelSpec ALL =
            ModelSpec.of(20, BOARD).withKinds(ModelKind.SLOTTED, ModelKind.NET, ModelKind.PANELS);
    private static final List<Drawing> DRAWINGS = ModelDrawings.of(Models.orchard(), ALL);

    @Test
    void sheetsAreNumberedForEachKind() {
        assertThat(DRAWINGS.stream().map(Drawing::name))
                .containsExactly(
                        "model/kit-01",
                        "model/fit-comb",
                        "model/net-01",
                        "model/net-02",
                        "model/net-03",
                        "model/panels-01",
                        "model/panels-02");
        assertThat(DRAWINGS).allMatch(d -> d.title().contains("kerf of 0.15 mm allowed for, so do not offset again"));
        assertThat(DRAWINGS.get(0).title()).startsWith("Slotted kit 1:20, sheet 1 of 1");
    }

    @Test
    void everythingLiesOnItsSheet() {
        for (Drawing drawing : DRAWINGS) {
            for (Part part : drawing.parts()) {
                for (Shape shape : part.shapes()) {
                    Polyline path = (Polyline) shape;
                    for (int c = 0; c < path.size(); c++) {
                        assertThat(path.x(c)).isBetween(-1e-6, drawing.widthMm() + 1e-6);
                        assertThat(path.y(c)).isBetween(-1e-6, drawing.heightMm() + 1e-6);
                    }
                }
            }
        }
    }

    @Test
    void partsStayApartByKerfAndWeb() {
        for (Drawing drawing : DRAWINGS) {
            List<Polygon> cuts = new ArrayList<>();
            Models.pieces(List.of(drawing)).forEach(part -> cuts.add(Models.polygon(Models.outline(part))));
            for (int a = 0; a < cuts.size(); a++) {
                assertThat(cuts.get(a).isValid()).isTrue();
                for (int b = 0; b < a; b++) {
                    if (cuts.get(a).getEnvelopeInternal().distance(cuts.get(b).getEnvelopeInternal()) < 2) {
                        assertThat(cuts.get(a).distance(cuts.get(b))).isGreaterThan(1.65 - 1e-6);
                    }
                }
            }
        }
    }

    @Test
    void lettersAndScoresLieOnTheirParts() {
        for (Part part : Models.pieces(DRAWINGS)) {
            Polygon whole = Models.polygon(Models.outline(part));
            for (Shape shape : part.shapes()) {
                Polyline path = (Polyline) shape;
                for (int c = 0; c < path.size(); c++) {
                    assertThat(whole.distance(whole.getFactory()
                                    .createPoint(new org.locationtech.jts.geom.Coordinate(path.x(c), path.y(c)))))
                            .as(part.mark())
                            .isLessThan(1e-6);
                }
            }
        }
    }

    @Test
    void whatIsDoneFirstComesFirst() {
        for (Part part : Models.pieces(DRAWINGS)) {
            assertThat(part.shapes().stream().map(Shape::operation).toList()).isSorted();
            assertThat(part.shapes())
                    .filteredOn(shape -> shape.operation() == Operation.CUT_OUTER)
                    .hasSize(1);
            assertThat(part.shapes()).anyMatch(shape -> shape.operation() == Operation.ENGRAVE);
        }
    }

    @Test
    void marksAreUniqueOnEverySheet() {
        for (Drawing drawing : DRAWINGS) {
            assertThat(drawing.parts().stream().map(Part::mark))
                    .doesNotHaveDuplicates()
                    .allMatch(mark -> mark.matches("[A-Za-z0-9._-]+"));
        }
    }

    @Test
    void theCombHasSlotsInStepsOfATwentiethAsWideAsTheyComeOut() {
        Polyline comb = Models.outline(DRAWINGS.get(1).parts().get(0));
        List<Double> widths = new ArrayList<>();
        for (int c = 0; c + 1 < comb.size(); c++) {
            double high = Math.max(comb.y(c), comb.y(c + 1));
            if (Math.abs(comb.y(c) - comb.y(c + 1)) < 1e-9 && high < 15 && high > 8) {
                widths.add(Math.abs(comb.x(c) - comb.x(c + 1)));
            }
        }
        assertThat(widths).hasSize(10);
        for (int slot = 0; slot < 10; slot++) {
            double comesOut = widths.get(9 - slot) + 0.15;
            assertThat(comesOut).isCloseTo(3 + (slot - 3) * 0.05, within(1e-9));
        }
    }

    @Test
    void aCardOfItsOwnIsUsedForNets() {
        ModelSpec spec = new ModelSpec(20, BOARD, new Card(420, 297, 6), List.of(ModelKind.NET));
        assertThat(ModelDrawings.of(Models.orchard(), spec)).allMatch(drawing -> drawing.widthMm() == 420);
    }

    @Test
    void aPanelLargerThanTheCardIsRefused() {
        ModelSpec spec = new ModelSpec(20, BOARD, new Card(50, 50, 6), List.of(ModelKind.PANELS));
        assertThatThrownBy(() -> ModelDrawings.of(Models.orchard(), spec))
                .isInstanceOfSatisfying(
                        CalotteException.class,
                        e -> assertThat(e.problems())
                                .hasSize(105)
                                .allMatch(p -> p.where().equals("model.card") && p.code() == Problem.Code.IMPOSSIBLE));
    }

    @Test
    void aDomeOfTooManyPartsIsRefused() {
        Parts many = Models.whole(Solid.ICOSAHEDRON, 8);
        assertThatThrownBy(() -> ModelDrawings.of(many, ALL))
                .isInstanceOfSatisfying(
                        CalotteException.class,
                        e -> assertThat(e.problems().get(0).code()).isEqualTo(Problem.Code.TOO_LARGE));
    }

    @Test
    void theSameModelIsDrawnAlike() {
        List<Drawing> again = ModelDrawings.of(Models.orchard(), ALL);
        for (int d = 0; d < again.size(); d++) {
            assertThat(coordinates(again.get(d))).isEqualTo(coordinates(DRAWINGS.get(d)));
        }
    }

    private static String coordinates(Drawing drawing) {
        StringBuilder text = new StringBuilder();
        for (Part part : drawing.parts()) {
            text.append(part.mark()).append(part.description());
            for (Shape shape : part.shapes()) {
                Polyline path = (Polyline) shape;
                for (int c = 0; c < path.size(); c++) {
                    text.append(path.x(c)).append(' ').append(path.y(c)).append(' ');
                }
            }
        }
        return text.toString();
    }
}
