package dev.calotte.assembly;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Size;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import java.util.List;
import org.junit.jupiter.api.Test;

class PieceMarksTest {

    private static final Dome DOME = Dome.of(DomeSpec.of(Solid.ICOSAHEDRON, new Breakdown(4, 1), Size.radius(3000)));
    private static final PieceMarks MARKS = new PieceMarks(Parts.of(DOME, Joinery.nodeToNode()));

    @Test
    void everyPieceHasAMarkOfItsOwn() {
        assertUnique(DOME.panels().stream().map(MARKS::of).toList());
        assertUnique(DOME.struts().stream().map(MARKS::of).toList());
        assertUnique(DOME.hubs().stream().map(MARKS::of).toList());
    }

    private static void assertUnique(List<String> marks) {
        assertThat(marks).doesNotHaveDuplicates();
        assertThat(marks).allMatch(mark -> mark.matches("[PSH][0-9]+[LR]?-[0-9]+\\.[0-9]{2,}"));
        assertThat(marks.stream().map(mark -> mark.substring(mark.indexOf('-'))))
                .doesNotHaveDuplicates();
    }

    @Test
    void theCrownIsTheFirstPlaceOfRowNought() {
        assertThat(MARKS.of(DOME.hubs().get(0))).endsWith("-0.01");
        assertThat(MARKS.of(DOME.panels().get(0))).endsWith("-1.01");
    }
}
