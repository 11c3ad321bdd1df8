package dev.calotte.dome;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class SkeletonTest {

    private static final Dome DOME = Dome.of(
            DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(4), Size.radius(3000)).withKeep(new Keep.Rows(1, 2)));
    private static final Skeleton SKELETON = DOME.skeleton();

    @Test
    void strutsAreThoseOfTheDome() {
        assertThat(SKELETON.strutCount()).isEqualTo(DOME.struts().size());
        for (Strut strut : DOME.struts()) {
            int start = SKELETON.start(strut.index());
            int end = SKELETON.end(strut.index());
            assertThat(List.of(Math.min(start, end), Math.max(start, end))).containsExactly(strut.from(), strut.to());
            assertThat(SKELETON.lengthMm(strut.index())).isEqualTo(strut.lengthMm());
            assertThat(Double.valueOf(SKELETON.dihedralRad(strut.index())))
                    .isEqualTo(Double.valueOf(strut.dihedralRad().orElse(Double.NaN)));
        }
    }

    @Test
    void panelsAreThoseOfTheDome() {
        assertThat(SKELETON.panelCount()).isEqualTo(DOME.panels().size());
        for (Panel panel : DOME.panels()) {
            for (int side = 0; side < 3; side++) {
                assertThat(SKELETON.strut(panel.index(), side))
                        .isEqualTo(panel.struts().get(side));
            }
        }
    }

    @Test
    void hubsAreThoseOfTheDome() {
        assertThat(SKELETON.hubCount()).isEqualTo(DOME.hubs().size());
        for (Hub hub : DOME.hubs()) {
            List<Integer> around = new ArrayList<>();
            for (Spoke spoke : DOME.around(hub.index())) {
                around.add(spoke.strut());
                around.add(spoke.opposite());
            }
            assertThat(SKELETON.around(hub.index()))
                    .containsExactly(around.stream().mapToInt(Integer::intValue).toArray());
            assertThat(SKELETON.isOpen(hub.index())).isEqualTo(hub.open());
        }
    }
}
