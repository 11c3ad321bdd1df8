package dev.calotte.output;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.document.Document;
import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Size;
import dev.calotte.drawing.Subject;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.solid.PrintSpec;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import dev.calotte.units.UnitSystem;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class DocumentsTest {

    @Test
    void aDomeHasItsFrameItsPatternsItsDrawingsAndItsModel() {
        assertThat(names(3, 0))
                .containsExactly(
                        "frame-3d",
                        "panels/P1",
                        "panels/P2",
                        "drawings/view",
                        "drawings/plan",
                        "drawings/plan-below",
                        "drawings/patches",
                        "drawings/patches-below",
                        "drawings/elevation",
                        "drawings/rows",
                        "drawings/panels",
                        "drawings/hubs",
                        "drawings/step-01",
                        "drawings/step-02",
                        "drawings/step-03",
                        "drawings/step-04",
                        "drawings/step-05",
                        "drawings/step-06",
                        "drawings/step-07",
                        "drawings/step-08",
                        "drawings/step-09",
                        "model");
    }

    @Test
    void aDomeOfTooManyPanelsHasNoPictures() {
        assertThat(names(16, 0)).noneMatch(name -> name.startsWith("drawings/")).contains("model");
    }

    @Test
    void whatIsCutBearsTheKerfInItsNameAndHasACoupon() {
        assertThat(names(3, 0.15))
                .startsWith(
                        "frame-3d", "panels/P1-kerf0.15", "panels/P2-kerf0.15", "kerf-coupon-kerf0.15", "drawings/view")
                .endsWith("model")
                .allMatch(name -> name.contains("-kerf0.15") == name.matches("(panels|sheets|hubs|kerf-coupon).*"));
    }

    private static List<String> names(int frequency, double kerf) {
        Dome dome = Dome.of(DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(frequency), Size.radius(3000)));
        Subject subject = new Subject("dome", Parts.of(dome, Joinery.nodeToNode()), UnitSystem.METRIC, 0);
        Extras extras = new Extras(Optional.of(PrintSpec.body(20)), Optional.empty(), Optional.empty());
        return Documents.of(Contents.of(subject).withKerf(kerf).with(extras)).stream()
                .map(Document::name)
                .toList();
    }
}
