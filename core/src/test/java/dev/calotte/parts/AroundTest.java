package dev.calotte.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Hub;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Size;
import dev.calotte.dome.Spoke;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import java.util.List;
import org.junit.jupiter.api.Test;

class AroundTest {

    private static final Dome DOME = Dome.of(
            DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(3), Size.radius(3000)).withKeep(new Keep.Rows(5, 9)));
    private static final Parts PARTS = Parts.of(DOME, Joinery.gap(45));

    @Test
    void everyHubIsListedFromTheFirstStrutOfItsKind() {
        for (Hub hub : DOME.hubs()) {
            HubKind kind = PARTS.kindOf(hub);
            List<Spoke> spokes = PARTS.around(hub);
            assertThat(spokes).hasSameElementsAs(DOME.around(hub.index())).hasSameSizeAs(kind.struts());
            for (int i = 0; i < spokes.size(); i++) {
                Spoke spoke = spokes.get(i);
                assertThat(PARTS.kindOf(DOME.struts().get(spoke.strut())).number())
                        .isEqualTo(kind.struts().get(i));
                if (i < kind.gapsRad().size()) {
                    assertThat(spoke.gapRad().orElseThrow())
                            .isCloseTo(kind.gapsRad().get(i), within(1e-9));
                }
            }
        }
    }

    @Test
    void hubKindsNameTheirStruts() {
        HubKind four = PARTS.hubKinds().get(4);
        assertThat(four.mark()).isEqualTo("H4");
        assertThat(four.struts()).containsExactly(1, 2, 3, 2, 3, 2);
        assertThat(four.strutMarks()).containsExactly("S1", "S2", "S3", "S2", "S3", "S2");
    }
}
