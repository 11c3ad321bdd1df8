package dev.calotte.assembly;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Opening;
import dev.calotte.dome.Panel;
import dev.calotte.dome.Size;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.problem.Problem;
import dev.calotte.problem.Problem.Code;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A 3V of five rows with 5, 15, 25, 30 and 30 panels. */
class PanelMarksTest {

    private static final Dome DOME = Dome.of(
            DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(3), Size.radius(3000)).withKeep(new Keep.Rows(5, 9)));
    private static final Parts PARTS = Parts.of(DOME, Joinery.nodeToNode());

    @Test
    void everyPanelIsFoundByItsMark() {
        PieceMarks marks = new PieceMarks(PARTS);
        PanelMarks found = new PanelMarks(PARTS);
        for (Panel panel : DOME.panels()) {
            assertThat(found.find(marks.of(panel))).contains(panel);
        }
        assertThat(found.find("P1-9.99")).isEmpty();
    }

    @Test
    void marksAreThoseOfTheDomeWithoutOpenings() {
        PieceMarks marks = new PieceMarks(PARTS);
        Dome opened = DOME.withOpenings(List.of(new Opening("vent", List.of(0, 1, 2), true)));
        PanelMarks found = new PanelMarks(Parts.of(opened, Joinery.nodeToNode()));
        assertThat(found.find(marks.of(DOME.panels().get(0))))
                .contains(DOME.panels().get(0));
        assertThat(found.find(marks.of(DOME.panels().get(50))))
                .contains(DOME.panels().get(50));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "P2-1.01 | no panel has the mark P2-1.01. | The panel in that row and place is P1-1.01.",
                "P1-1.06 | no panel has the mark P1-1.06. | Row 1 has the places 01 to 05. Marks of single",
                "P1-2.16 | no panel has the mark P1-2.16. | Row 2 has the places 01 to 15. Marks of single",
                "P1-5.31 | no panel has the mark P1-5.31. | Row 5 has the places 01 to 30. Marks of single",
                "P1-6.01 | no panel has the mark P1-6.01. | The rows of panels are 1 to 5. Marks of single",
                "P1-0.01 | no panel has the mark P1-0.01. | The rows of panels are 1 to 5. Marks of single",
                "P1-5 | no panel has the mark P1-5. | The rows of panels are 1 to 5.",
                "P1 | no panel has the mark P1. | The rows of panels are 1 to 5.",
                "P1-99999999999.1 | no panel has the mark P1-99999999999.1. | The rows of panels are 1 to 5.",
                "S2-5.01 | S2-5.01 is no panel; only panels are removed. | Marks of single panels stand in dome.json",
                "H1-5.01 | H1-5.01 is no panel; only panels are removed. | Marks of single panels stand in dome.json",
            })
    void anUnknownMarkIsExplained(String mark, String what, String mend) {
        Problem problem = new PanelMarks(PARTS).unknown(mark, "openings[0].remove[1]");
        assertThat(problem.code()).isEqualTo(Code.WRONG_VALUE);
        assertThat(problem.where()).isEqualTo("openings[0].remove[1]");
        assertThat(problem.what()).isEqualTo(what);
        assertThat(problem.mend()).startsWith(mend);
    }
}
