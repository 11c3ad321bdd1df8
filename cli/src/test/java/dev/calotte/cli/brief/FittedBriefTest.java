package dev.calotte.cli.brief;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.sphere.Fitting;
import dev.calotte.sphere.Fitting.Goal;
import dev.calotte.sphere.Spacing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FittedBriefTest {

    private static BriefText brief(String keys) {
        return Briefs.of("dome: { breakdown: 3, " + keys + " }\nsize: { radius: 3 m }\n");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "spacing: fitted | WIDTH | 1.25",
                "spacing: fitted, strut-ratio: 1.4 | WIDTH | 1.4",
                "spacing: fitted, strut-ratio: 1 | WIDTH | 1",
                "spacing: fitted, fit: width, strut-ratio: 2 | WIDTH | 2",
                "fit: few-kinds, spacing: fitted | FEW_KINDS | 1.25"
            })
    void fittedIsReadWithItsRatioAndItsGoal(String keys, Goal goal, double ratio) {
        Project project = brief(keys).project();
        assertThat(project.dome().spacing()).isEqualTo(Spacing.FITTED);
        assertThat(project.dome().fitting()).isEqualTo(new Fitting(goal, ratio));
    }

    @Test
    void bothKeysMayStandBesideAnotherSpacing() {
        Project project =
                brief("fit: few-kinds, spacing: arc, strut-ratio: 1.3").project();
        assertThat(project.dome().spacing()).isEqualTo(Spacing.ARC);
        assertThat(project.dome().fitting()).isEqualTo(new Fitting(Goal.FEW_KINDS, 1.3));
    }

    @Test
    void aRatioThatIsWrongIsToldOnce() {
        assertThat(Briefs.problems(brief("strut-ratio: 0.5"))).hasSize(1);
    }
}
