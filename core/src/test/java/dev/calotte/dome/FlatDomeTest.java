package dev.calotte.dome;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.calotte.problem.CalotteException;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import dev.calotte.sphere.Up;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class FlatDomeTest {

    /** With its only upper face up, a solid above the centre is a single panel. */
    @ParameterizedTest
    @EnumSource(Size.Measure.class)
    void aSinglePanelIsNoDome(Size.Measure measure) {
        DomeSpec spec = DomeSpec.of(Solid.OCTAHEDRON, Breakdown.of(1), new Size(measure, 1500))
                .withUp(Up.FACE)
                .withKeep(new Keep.AboveHeight(0));
        assertThatThrownBy(() -> Dome.of(spec))
                .isInstanceOf(CalotteException.class)
                .hasMessageContaining("dome.keep: what stays is flat");
    }
}
