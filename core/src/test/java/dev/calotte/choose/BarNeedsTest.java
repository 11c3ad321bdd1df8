package dev.calotte.choose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Size;
import dev.calotte.nest.Cut;
import dev.calotte.parts.Ends;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.problem.CalotteException;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import dev.calotte.stock.Bar;
import dev.calotte.stock.Terms;
import java.util.List;
import org.junit.jupiter.api.Test;

class BarNeedsTest {

    private static final Dome DOME =
            Dome.of(DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(1), new Size(Size.Measure.LONGEST_STRUT, 1000)));

    /** By hand: 30 struts of 900 mm; six with five kerfs of 3 mm take 5415 mm of a bar, a seventh would not fit. */
    @Test
    void strutsAreCutAsLongAsTheyAre() {
        Parts parts = Parts.of(DOME, Joinery.gap(50));
        assertThat(BarNeeds.of(parts)).hasSize(1);
        Cut cut = BarNeeds.of(parts).get(0);
        assertThat(cut.mark()).isEqualTo("S1");
        assertThat(cut.count()).isEqualTo(30);
        assertThat(cut.lengthMm()).isBetween(899.999, 900.001);
        assertThat(BarNeeds.plan(parts, List.of(new Bar(6000, 3, 0, Terms.OPEN)))
                        .bars())
                .hasSize(5);
    }

    @Test
    void railsAreCutAtTheirLongestPoint() {
        Parts parts = Parts.of(DOME, Joinery.nodeToNode().withEnds(new Ends.Mitred(38, 90)));
        assertThat(BarNeeds.of(parts)).allSatisfy(cut -> assertThat(cut.mark()).startsWith("R"));
        assertThat(BarNeeds.of(parts).stream().mapToInt(Cut::count).sum()).isEqualTo(60);
        assertThat(BarNeeds.of(parts).get(0).lengthMm())
                .isEqualTo(parts.railKinds().get(0).longMm());
    }

    @Test
    void aBarThatIsTooShortIsRefused() {
        Parts parts = Parts.of(DOME, Joinery.gap(50));
        assertThatExceptionOfType(CalotteException.class)
                .isThrownBy(() -> BarNeeds.plan(parts, List.of(new Bar(800, 3, 0, Terms.OPEN))))
                .satisfies(e -> assertThat(e.problems().get(0).where()).isEqualTo("frame.bar.length"));
    }
}
