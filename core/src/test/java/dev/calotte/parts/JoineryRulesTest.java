package dev.calotte.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Size;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem;
import dev.calotte.problem.Problem.Code;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class JoineryRulesTest {

    private static final Joinery PLAIN = Joinery.nodeToNode();
    private static final HubPlate PLATE = HubPlate.of(140, 10, 100);

    private static Joinery flat(double flatten, double hole, double edge) {
        return PLAIN.withEnds(new Ends.Flattened(flatten, hole, edge, OptionalDouble.empty()));
    }

    private static Problem only(Joinery joinery) {
        assertThat(joinery.problems()).hasSize(1);
        return joinery.problems().get(0);
    }

    @Test
    void whatGoesTogetherIsNoProblem() {
        assertThat(PLAIN.problems()).isEmpty();
        assertThat(Joinery.gap(45).withHubPlate(PLATE).problems()).isEmpty();
        assertThat(flat(40, 10, 20).withHubPlate(PLATE).problems()).isEmpty();
        assertThat(flat(40, 10, 20).withHubGaps(HubGaps.all(45)).problems()).isEmpty();
        assertThat(flat(40, 10, 20)
                        .withHubPlate(PLATE)
                        .withHubGaps(HubGaps.all(30))
                        .problems())
                .isEmpty();
        assertThat(PLAIN.withEnds(new Ends.Mitred(45, 95)).problems()).isEmpty();
    }

    @Test
    void theHoleStandsOnTheFlat() {
        Problem problem = only(flat(20, 10, 20));
        assertThat(problem.code()).isEqualTo(Code.IMPOSSIBLE);
        assertThat(problem.where()).isEqualTo("frame.ends");
        assertThat(problem.what()).isEqualTo("the hole stands 20.0 mm from the tube's end, and only 20.0 mm are flat.");
        assertThat(problem.mend()).isEqualTo("Flatten more than 20.0 mm.");
        assertThat(flat(20.1, 10, 20).problems()).isEmpty();
    }

    @Test
    void theHoleDoesNotBreakOut() {
        Problem problem = only(flat(40, 10, 5));
        assertThat(problem.code()).isEqualTo(Code.IMPOSSIBLE);
        assertThat(problem.what()).isEqualTo("a hole of 10.0 mm breaks out 5.0 mm from the tube's end.");
        assertThat(problem.mend()).isEqualTo("Set hole-edge to 20.0 mm, twice the hole.");
        assertThat(flat(40, 10, 5.1).problems()).isEmpty();
    }

    @Test
    void railsHaveNeitherGapsNorPlates() {
        Joinery rails = PLAIN.withEnds(new Ends.Mitred(45, 95));
        assertThat(only(rails.withHubGaps(HubGaps.all(0))).where()).isEqualTo("frame.hub-gap");
        assertThat(only(rails.withHubPlate(PLATE)).where()).isEqualTo("frame.hub-plate");
        List<Problem> both =
                rails.withHubGaps(HubGaps.all(0)).withHubPlate(PLATE).problems();
        assertThat(both).extracting(Problem::code).containsExactly(Code.CONFLICT, Code.CONFLICT);
    }

    @Test
    void holesKeepTheirDistanceFromTheRim() {
        Problem problem = only(PLAIN.withHubPlate(HubPlate.of(129, 10, 100)));
        assertThat(problem.code()).isEqualTo(Code.IMPOSSIBLE);
        assertThat(problem.where()).isEqualTo("frame.hub-plate");
        assertThat(problem.what())
                .isEqualTo("holes of 10.0 mm on a circle of 100.0 mm stand nearer the rim of a disc of 129.0 mm"
                        + " than their diameter.");
        assertThat(problem.mend()).startsWith("Use a disc of 130.0 mm or more,");
        assertThat(PLAIN.withHubPlate(HubPlate.of(130, 10, 100)).problems()).isEmpty();
    }

    @Test
    void squareEndsReachTheHolesOfThePlate() {
        Problem problem = only(Joinery.gap(50).withHubPlate(PLATE));
        assertThat(problem.code()).isEqualTo(Code.CONFLICT);
        assertThat(problem.what()).isEqualTo("struts end 50.0 mm from the axis, the holes stand at 50.0 mm.");
        assertThat(problem.mend()).isEqualTo("Use a hole-circle of more than 100.0 mm, or a smaller hub-gap.");
        assertThat(Joinery.gap(49.9).withHubPlate(PLATE).problems()).isEmpty();
    }

    @Test
    void cuttersGetIntoTheSlots() {
        HubPlate plate = PLATE.withSlot(5).withCutter(6);
        Problem problem = only(Joinery.gap(45).withHubPlate(plate));
        assertThat(problem.code()).isEqualTo(Code.IMPOSSIBLE);
        assertThat(problem.what()).isEqualTo("a cutter of 6.0 mm does not get into slots of 5.0 mm.");
        assertThat(problem.mend()).isEqualTo("Set slot to 6.2 mm or more.");
        assertThat(Joinery.gap(45).withHubPlate(plate.withSlot(6)).problems()).isEmpty();
        // a plate that stays flat has no slots
        assertThat(flat(40, 10, 20).withHubPlate(plate).problems()).isEmpty();
    }

    @Test
    void usualSlotsAreAsWideAsTheirCutterAsks() {
        assertThat(HubPlate.usualSlotMm(0)).isEqualTo(2);
        assertThat(HubPlate.usualSlotMm(1)).isEqualTo(2);
        assertThat(HubPlate.usualSlotMm(6)).isEqualTo(6.2);
    }

    @Test
    void partsAreNotMadeOfWhatDoesNotGoTogether() {
        Dome dome = Dome.of(DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(2), Size.radius(1000)));
        Joinery joinery = flat(10, 50, 20);
        assertThat(joinery.problems()).hasSize(2);
        assertThat(catchThrowableOfType(CalotteException.class, () -> Parts.of(dome, joinery))
                        .problems())
                .isEqualTo(joinery.problems());
    }
}
