package dev.calotte.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.document.Wireframe;
import dev.calotte.document.Wireframe.Layer;
import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Opening;
import dev.calotte.dome.Size;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class FrameWiresTest {

    private static final Dome DOME = Dome.of(
            DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(4), Size.radius(2600)).withKeep(new Keep.Rows(1, 2)));
    private static final Parts PARTS = Parts.of(DOME, Joinery.nodeToNode());
    private static final Wireframe WIRES = FrameWires.of("dome", PARTS);

    @Test
    void everyKindHasALayerWithItsPieces() {
        assertThat(WIRES.layers().stream().collect(Collectors.toMap(Layer::name, Layer::size)))
                .containsEntry("HUBS-H4", 6)
                .containsEntry("STRUTS-S5", 70)
                .containsEntry("PANELS-P3L", 30)
                .containsEntry("PANELS-P3R", 30)
                .hasSize(PARTS.hubKinds().size()
                        + PARTS.strutKinds().size()
                        + PARTS.panelKinds().size());
    }

    @Test
    void whatAnOpeningTookIsNotDrawn() {
        Dome opened = DOME.withOpenings(List.of(new Opening("vent", List.of(0, 1, 2, 3, 4), true)));
        Wireframe wires = FrameWires.of("dome", Parts.of(opened, Joinery.nodeToNode()));
        assertThat(size(wires, Wireframe.Sort.FACES)).isEqualTo(155);
        assertThat(size(wires, Wireframe.Sort.LINES)).isEqualTo(245);
        assertThat(size(wires, Wireframe.Sort.POINTS)).isEqualTo(90);
    }

    private static int size(Wireframe wires, Wireframe.Sort sort) {
        return wires.layers().stream()
                .filter(layer -> layer.sort() == sort)
                .mapToInt(Layer::size)
                .sum();
    }

    @Test
    void linesRunFromNodeToNode() {
        for (Layer layer : WIRES.layers()) {
            if (layer.sort() == Wireframe.Sort.LINES) {
                double length = PARTS.strutKinds().stream()
                        .filter(kind -> layer.name().equals("STRUTS-" + kind.mark()))
                        .mapToDouble(kind -> kind.lengthMm())
                        .sum();
                for (int i = 0; i < layer.size(); i++) {
                    assertThat(length(layer, i)).isCloseTo(length, within(2600e-9));
                }
            }
        }
    }

    private static double length(Layer layer, int line) {
        double sum = 0;
        for (int axis = 0; axis < 3; axis++) {
            double step = layer.at(line, 1, axis) - layer.at(line, 0, axis);
            sum += step * step;
        }
        return Math.sqrt(sum);
    }
}
