package dev.calotte.nest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.nest.Goal.Proof;
import org.junit.jupiter.api.Test;

class GoalTest {

    private static Goal goal(double reached, double bound) {
        return new Goal(Measure.AREA_MM2, reached, bound, Proof.AREA);
    }

    @Test
    void whatCouldBeSavedIsAPartOfWhatIsSpent() {
        assertThat(goal(8, 6).gap()).isCloseTo(0.25, within(1e-15));
        assertThat(goal(8, 8).gap()).isZero();
        assertThat(goal(0, 0).gap()).isZero();
    }

    @Test
    void aPlanIsProvenWhereOnlyRoundingIsBetweenItAndTheBound() {
        assertThat(goal(12, 12).proven()).isTrue();
        assertThat(goal(1e9, 1e9 - 0.5).proven()).isTrue();
        assertThat(goal(1e9, 1e9 - 2).proven()).isFalse();
        assertThat(goal(12, 11).proven()).isFalse();
    }

    @Test
    void aBoundThatRoundingLiftedAboveThePlanIsPutRight() {
        assertThat(goal(5, 5 + 1e-12).bound()).isEqualTo(5);
        assertThat(goal(5, 4).bound()).isEqualTo(4);
    }
}
