package dev.calotte.parts;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.dome.Base;
import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Size;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import org.junit.jupiter.api.Test;

class LevelNoteTest {

    private static final DomeSpec THREE = DomeSpec.of(
                    Solid.ICOSAHEDRON, Breakdown.of(3), new Size(Size.Measure.FLOOR_DIAMETER, 6400))
            .withKeep(new Keep.Rows(5, 9));

    /** Three kinds of struts and two of panels: the well-known 3V; the level ones are counted from the kinds. */
    @Test
    void kindsAreCountedBeforeAndAfter() {
        Parts level = Parts.of(Dome.of(THREE.withBase(Base.LEVEL)), Joinery.gap(45));
        assertThat(level.strutKinds()).hasSizeGreaterThan(3);
        assertThat(level.notes())
                .containsExactly(
                        "Kinds from node to node: " + level.strutKinds().size() + " of struts and "
                                + level.panelKinds().size()
                                + " of panels with the level base; 3 of struts and 2 of panels with the base as-is.");
    }

    @Test
    void thereIsNothingToSayWhereNoHubMoved() {
        assertThat(Parts.of(Dome.of(THREE), Joinery.gap(45)).notes()).isEmpty();
        DomeSpec flat = DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(2), Size.radius(3000))
                .withKeep(new Keep.Rows(1, 2))
                .withBase(Base.LEVEL);
        assertThat(Parts.of(Dome.of(flat), Joinery.gap(45)).notes()).isEmpty();
    }
}
