package dev.calotte.cli.brief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.dome.Dome;
import dev.calotte.dome.Size;
import dev.calotte.parts.Ends;
import dev.calotte.parts.HubGaps;
import dev.calotte.parts.HubPlate;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.LongestCut;
import dev.calotte.parts.Parts;
import dev.calotte.parts.StrutKind;
import dev.calotte.problem.Problem;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class FrameReaderTest {

    private static Project project(String frame) {
        return Briefs.of(Briefs.LEAST + frame).project();
    }

    private static Joinery joinery(String keys) {
        return project("frame: {" + keys + "}\n").joinery();
    }

    @Test
    void gapsAreReadByHub() {
        assertThat(joinery("hub-gap: 45 mm")).isEqualTo(Joinery.gap(45));
        assertThat(joinery("hub-gap: 0")).isEqualTo(Joinery.gap(0)).isNotEqualTo(Joinery.nodeToNode());
        assertThat(joinery("hub-gap: {base: 60 mm, 5: 45, 6: 5 cm, other: 40}").hubGaps())
                .contains(new HubGaps(OptionalDouble.of(60), Map.of(5, 45.0, 6, 50.0), OptionalDouble.of(40)));
        assertThat(joinery("hub-gap: {3: 1, 4: 2}").hubGaps())
                .contains(new HubGaps(OptionalDouble.empty(), Map.of(3, 1.0, 4, 2.0), OptionalDouble.empty()));
    }

    @Test
    void whatTheWorkshopTellsApartIsRead() {
        assertThat(joinery("merge-within: 3 mm, cut-tolerance: 0.5 mm"))
                .isEqualTo(Joinery.nodeToNode().withMergeWithin(3).withCutTolerance(0.5));
        assertThat(joinery("merge-within: 0, cut-tolerance: 0"))
                .isEqualTo(Joinery.nodeToNode().withCutTolerance(0));
        assertThat(joinery("").cutToleranceMm()).isEqualTo(1);
    }

    @Test
    void endsAreRead() {
        assertThat(joinery("ends: {flatten: 40 mm, hole: 10 mm, hole-edge: 20 mm}")
                        .ends())
                .isEqualTo(new Ends.Flattened(40, 10, 20, OptionalDouble.empty()));
        assertThat(joinery("ends: {flatten: 40 mm, hole: 10 mm, hole-edge: 20 mm, wall: 0.8 mm}")
                        .ends())
                .isEqualTo(new Ends.Flattened(40, 10, 20, OptionalDouble.of(0.8)));
        assertThat(joinery("ends: {mitred: [45 mm, 95 mm]}").ends()).isEqualTo(new Ends.Mitred(45, 95));
        assertThat(joinery("hub-gap: 1").ends()).isEqualTo(new Ends.Plain());
    }

    @Test
    void platesAreRead() {
        assertThat(joinery("hub-plate: {diameter: 140 mm, hole: 10 mm, hole-circle: 100 mm}")
                        .hubPlate())
                .contains(HubPlate.of(140, 10, 100));
        assertThat(joinery("hub-plate: {diameter: 140 mm, hole: 10 mm, hole-circle: 100 mm, slot: 3 mm}")
                        .hubPlate())
                .contains(HubPlate.of(140, 10, 100).withSlot(3));
        assertThat(joinery("hub-plate: {diameter: 140 mm, hole: 10 mm, hole-circle: 100 mm, slot: 7 mm, cutter: 6 mm}")
                        .hubPlate())
                .contains(HubPlate.of(140, 10, 100).withSlot(7).withCutter(6));
        assertThat(joinery("hub-plate: {diameter: 140 mm, hole: 10 mm, hole-circle: 100 mm, cutter: 6 mm}")
                        .hubPlate())
                .contains(HubPlate.of(140, 10, 100).withSlot(6.2).withCutter(6));
        assertThat(joinery("").hubPlate()).isEmpty();
    }

    /** A value that is refused already must not be blamed for not going with another. */
    @Test
    void whatGoesTogetherIsAskedOnlyOfSoundValues() {
        for (String frame : List.of(
                "hub-gap: x, ends: {flatten: 1, hole: 10, hole-edge: 20}",
                "hub-gap: {5: x}, ends: {mitred: [45, 95]}",
                "merge-within: x, ends: {flatten: 1, hole: 10, hole-edge: 20}",
                "cut-tolerance: x, ends: {flatten: 1, hole: 10, hole-edge: 20}",
                "ends: {flatten: x, hole: 10, hole-edge: 1}",
                "ends: {flatten: 10, hole: x, hole-edge: 20}",
                "ends: {flatten: 10, hole: 10, hole-edge: x}",
                "ends: {flatten: 10, hole: 10, hole-edge: 20, wall: x}",
                "ends: {flatten: 10, hole-edge: 20}",
                "ends: {mitred: x}, hub-gap: 1",
                "ends: {mitred: [1, 1], hole: 1}, hub-gap: 1",
                "hub-plate: {diameter: x, hole: 10, hole-circle: 10}",
                "hub-plate: {diameter: 1, hole: 10}",
                "hub-gap: {}, ends: {mitred: [1, 1]}",
                "hub-plate: {diameter: 10, hole: 10, hole-circle: 10, cutter: x}",
                "hub-plate: {diameter: 10, hole: 10, hole-circle: 10, slot: x}")) {
            List<Problem> problems = Briefs.problems(Briefs.of(Briefs.LEAST + "frame: {" + frame + "}\n"));
            assertThat(problems).as(frame).hasSize(1);
        }
        assertThat(Briefs.problems(Briefs.of(Briefs.LEAST + "frame: {ends: {flatten: 1, hole: 50, hole-edge: 20}}\n")))
                .hasSize(2);
    }

    @Test
    void theLongestCutIsWhatIsAskedForWhateverTheEnds() {
        for (String frame : List.of(
                "hub-gap: 45",
                "hub-gap: {base: 60, other: 45}",
                "ends: {flatten: 40, hole: 10, hole-edge: 20}",
                "ends: {mitred: [45, 95]}")) {
            Project project = Briefs.of(
                            "dome: {breakdown: 3, keep: 5/9}\nsize: {longest-cut: 1200}\nframe: {" + frame + "}\n")
                    .project();
            Parts parts = Parts.of(Dome.of(project.dome().withSize(cutTo(project))), project.joinery());
            double longest = parts.strutKinds().stream()
                    .mapToDouble(StrutKind::cutLengthMm)
                    .max()
                    .orElseThrow();
            assertThat(longest).as(frame).isCloseTo(1200, within(1e-6));
        }
    }

    private static Size cutTo(Project project) {
        SizeWish.LongestCut wish = (SizeWish.LongestCut) project.size();
        return LongestCut.size(project.dome(), project.joinery(), wish.mm());
    }

    @Test
    void problemsOfTheBriefComeBeforeThoseOfTheSize() {
        assertThat(Briefs.problems(
                        Briefs.of("dome: {breakdown: x}\nsize: {longest-cut: 1200}\nframe: {hub-gap: {5: 1}}\n")))
                .extracting(Problem::where)
                .containsExactly("dome.breakdown");
    }
}
