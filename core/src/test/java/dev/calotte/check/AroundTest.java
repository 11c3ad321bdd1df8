package dev.calotte.check;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.check.Around.Spoke;
import dev.calotte.check.RecordedDome.Panel;
import dev.calotte.check.RecordedDome.Strut;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class AroundTest {

    private static final RecordedDome DOME = Records.dome(CheckedDomes.ICOSAHEDRON);
    private static final Around AROUND = new Around(DOME);

    /** Between two struts that follow each other lies a panel, but for the open side of hubs at the base. */
    @Test
    void eachPanelLiesBetweenTwoStrutsAtEachOfItsHubs() {
        List<String> seen = new ArrayList<>();
        for (int vertex = 0; vertex < DOME.vertices().size(); vertex++) {
            List<Spoke> spokes = AROUND.struts(vertex);
            for (int i = 0; i < spokes.size(); i++) {
                Strut next = spokes.get((i + 1) % spokes.size()).strut();
                AROUND.panel(vertex, spokes.get(i).strut(), next).ifPresent(seen::add);
            }
        }
        assertThat(seen).hasSize(3 * DOME.panels().size());
        assertThat(DOME.panels())
                .allSatisfy(panel ->
                        assertThat(seen).filteredOn(panel.mark()::equals).hasSize(3));
    }

    @Test
    void thereIsNoPanelClockwise() {
        List<Spoke> crown = AROUND.struts(0);
        assertThat(crown).hasSize(5);
        assertThat(AROUND.panel(0, crown.get(1).strut(), crown.get(0).strut())).isEqualTo(Optional.empty());
    }

    @Test
    void aPanelHasThreeStrutsAlongItsSides() {
        assertThat(DOME.panels())
                .allSatisfy(panel -> assertThat(AROUND.kinds(panel)).hasSize(3));
        RecordedDome without = new Altered(DOME).struts(Found.without(DOME.struts(), 0));
        Around around = new Around(without);
        Strut gone = DOME.struts().get(0);
        List<Panel> beside = DOME.panels().stream()
                .filter(panel -> panel.vertices().contains(gone.from())
                        && panel.vertices().contains(gone.to()))
                .toList();
        assertThat(beside)
                .hasSize(2)
                .allSatisfy(panel -> assertThat(around.kinds(panel)).hasSize(2));
    }
}
