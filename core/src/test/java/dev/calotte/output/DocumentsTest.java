package dev.calotte.output;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.document.Document;
import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Size;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import dev.calotte.units.UnitSystem;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class DocumentsTest {

    @Test
    void aDomeHasItsFrameItsPatternsItsViewAndItsModel() {
        assertThat(names(3)).containsExactly("frame-3d", "panels/P1", "panels/P2", "drawings/view", "model");
    }

    @Test
    void aDomeOfTooManyPanelsHasNoView() {
        assertThat(names(16)).doesNotContain("drawings/view").contains("model");
    }

    private static List<String> names(int frequency) {
        Dome dome = Dome.of(DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(frequency), Size.radius(3000)));
        return Documents.of(new Contents(
                        "dome",
                        Parts.of(dome, Joinery.nodeToNode()),
                        List.of(),
                        List.of(),
                        UnitSystem.METRIC,
                        20,
                        Optional.empty()))
                .stream()
                .map(Document::name)
                .toList();
    }
}
