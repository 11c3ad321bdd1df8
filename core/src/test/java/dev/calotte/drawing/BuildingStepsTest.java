package dev.calotte.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.dome.Dome;
import dev.calotte.dome.Panel;
import dev.calotte.dome.Strut;
import dev.calotte.drawing.BuildingSteps.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BuildingStepsTest {

    static Stream<Named<Dome>> domes() {
        return DrawnDomes.all();
    }

    @ParameterizedTest
    @MethodSource("domes")
    void everyPieceIsInOneStep(Dome dome) {
        List<Integer> struts = new ArrayList<>();
        List<Integer> panels = new ArrayList<>();
        for (Step step : BuildingSteps.of(dome)) {
            struts.addAll(step.struts().stream().map(Strut::index).toList());
            panels.addAll(step.panels().stream().map(Panel::index).toList());
        }
        assertThat(struts).hasSize(dome.struts().size()).doesNotHaveDuplicates();
        assertThat(panels).hasSize(dome.panels().size()).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @MethodSource("domes")
    void everyPanelFindsItsThreeStruts(Dome dome) {
        boolean[] stands = new boolean[dome.struts().size()];
        for (Step step : BuildingSteps.of(dome)) {
            step.struts().forEach(strut -> stands[strut.index()] = true);
            for (Panel panel : step.panels()) {
                assertThat(panel.struts()).allMatch(strut -> stands[strut]);
            }
        }
    }

    @Test
    void stepsGoUpFromTheBase() {
        assertThat(BuildingSteps.of(DrawnDomes.withDoor(true)))
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
        Step first = BuildingSteps.of(subject.dome()).get(0);
        StepWords words = new StepWords(subject.parts(), first);
        assertThat(first.struts()).hasSize(60);
        assertThat(words.struts()).isEqualTo("20 of S2, 40 of S3");
        assertThat(words.panels()).isEqualTo("P2 x 30");
        assertThat(words.title()).isEqualTo("Row 5: 20 of S2, 40 of S3; panels P2 x 30");
        assertThat(words.lines()).containsExactly("Struts: 20 of S2, 40 of S3", "Panels: P2 x 30");
    }
}
