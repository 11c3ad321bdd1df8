package dev.calotte.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.assembly.Raise;
import dev.calotte.dome.Dome;
import dev.calotte.dome.Panel;
import dev.calotte.dome.Strut;
import dev.calotte.drawing.BuildingSteps.Step;
import dev.calotte.units.UnitSystem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class BuildingStepsTest {

    static Stream<Arguments> domesBothWays() {
        return DrawnDomes.all().flatMap(dome -> Arrays.stream(Raise.values()).map(raise -> Arguments.of(dome, raise)));
    }

    @ParameterizedTest
    @MethodSource("domesBothWays")
    void everyPieceIsInOneStep(Dome dome, Raise raise) {
        List<Integer> struts = new ArrayList<>();
        List<Integer> panels = new ArrayList<>();
        for (Step step : BuildingSteps.of(dome, raise)) {
            struts.addAll(step.struts().stream().map(Strut::index).toList());
            panels.addAll(step.panels().stream().map(Panel::index).toList());
        }
        assertThat(struts).hasSize(dome.struts().size()).doesNotHaveDuplicates();
        assertThat(panels).hasSize(dome.panels().size()).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @MethodSource("domesBothWays")
    void everyPanelFindsItsThreeStruts(Dome dome, Raise raise) {
        boolean[] stands = new boolean[dome.struts().size()];
        for (Step step : BuildingSteps.of(dome, raise)) {
            step.struts().forEach(strut -> stands[strut.index()] = true);
            for (Panel panel : step.panels()) {
                assertThat(panel.struts()).allMatch(strut -> stands[strut]);
            }
        }
    }

    @Test
    void stepsGoUpFromTheBase() {
        assertThat(BuildingSteps.of(DrawnDomes.withDoor(true), Raise.BASE))
                .extracting(Step::row)
                .containsExactly(5, 4, 3, 2, 1);
    }

    /**
     * The lowest row of a 3V of five rows, counted by its hubs: the 15 base struts are 5 of S2 and 10 of S3, so are the
     * 15 of the ring above, which is the same ring seen from the other pole, and 10 of S2 and 20 of S3 lie between.
     */
    @Test
    void wordsCountWhatIsNew() {
        Subject subject = DrawnDomes.subject(DrawnDomes.withDoor(true).whole());
        Step first = BuildingSteps.of(subject.dome(), Raise.BASE).get(0);
        StepWords words = new StepWords(subject.parts(), first);
        assertThat(first.struts()).hasSize(60);
        assertThat(words.struts()).isEqualTo("20 of S2, 40 of S3");
        assertThat(words.panels()).isEqualTo("P2 x 30");
        assertThat(words.title()).isEqualTo("Row 5: 20 of S2, 40 of S3; panels P2 x 30");
        assertThat(words.lines(UnitSystem.METRIC)).containsExactly("Struts: 20 of S2, 40 of S3", "Panels: P2 x 30");
    }

    /**
     * The crown of a 3V is five struts S1 round the top and five S2 that close them; its base row has no more than the
     * 30 struts that come down to the base and the 15 of the base ring, for the ring above hangs already.
     */
    @Test
    void stepsGoDownFromTheCrown() {
        Subject subject = DrawnDomes.subject(DrawnDomes.withDoor(true).whole());
        List<Step> steps = BuildingSteps.of(subject.dome(), Raise.CROWN);
        assertThat(steps).extracting(Step::row).containsExactly(1, 2, 3, 4, 5);
        StepWords crown = new StepWords(subject.parts(), steps.get(0));
        assertThat(crown.struts()).isEqualTo("5 of S1, 5 of S2");
        assertThat(crown.panels()).isEqualTo("P1 x 5");
        assertThat(crown.lines(UnitSystem.METRIC).get(0)).isEqualTo("Put this together on the ground, under the mast.");
        assertThat(steps.get(4).struts()).hasSize(45);
    }

    /** All lifts together are what a dome is high below its crown's first ring of hubs. */
    @Test
    void liftsMakeRoomForEachRow() {
        Subject subject = DrawnDomes.subject(DrawnDomes.withDoor(true).whole());
        Dome dome = subject.dome();
        List<Step> steps = BuildingSteps.of(dome, Raise.CROWN);
        double ring = dome.hubs().get(1).position().getZ();
        double lowest = dome.hubs().stream()
                .mapToDouble(hub -> hub.position().getZ())
                .min()
                .orElseThrow();
        assertThat(steps.get(0).liftMm()).hasValue(0);
        assertThat(steps.subList(1, 5)).allSatisfy(step -> {
            double mm = step.liftMm().orElseThrow();
            assertThat(mm).isPositive();
            assertThat(new StepWords(subject.parts(), step)
                            .lines(UnitSystem.METRIC)
                            .get(0))
                    .startsWith("Lift what is there by at least " + UnitSystem.METRIC.length(mm) + ", ");
        });
        assertThat(steps.stream().mapToDouble(s -> s.liftMm().orElseThrow()).sum())
                .isCloseTo(ring - lowest, within(1e-9 * ring));
        assertThat(BuildingSteps.of(dome, Raise.BASE))
                .allSatisfy(step -> assertThat(step.liftMm()).isEmpty());
    }
}
