package dev.calotte.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.nest.BarPlan;
import dev.calotte.nest.Cut;
import dev.calotte.problem.CalotteException;
import dev.calotte.stock.Bar;
import dev.calotte.stock.Terms;
import dev.calotte.testing.Cases;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class BarEstimateTest {

    private static final Bar BAR = new Bar(6000, 3, 10, Terms.OPEN);

    private static Bar priced(double lengthMm, double price) {
        return new Bar(
                lengthMm, 3, 0, new Terms(OptionalDouble.of(price), OptionalDouble.empty(), OptionalInt.empty()));
    }

    /** First fit, longest first, takes at most 11/9 of the least and 6/9 of a bar (Dosa, 2007). */
    @Test
    void itIsNoLessThanThePlanAndNotMuchMore() {
        Cases.each(60, (random, size) -> {
            List<Cut> cuts = new ArrayList<>();
            for (int kind = 1; kind <= 1 + size % 6; kind++) {
                cuts.add(new Cut("S" + kind, 300 + 2500 * random.nextDouble(), 1 + random.nextInt(30)));
            }
            BarUse plan = BarUse.of(BarPlan.of(cuts, List.of(BAR)), List.of(BAR));
            BarUse estimate = BarEstimate.of(cuts, List.of(BAR));
            assertThat(estimate.count()).isGreaterThanOrEqualTo(plan.count());
            assertThat((double) estimate.count()).isLessThanOrEqualTo(11 * plan.count() / 9.0 + 6 / 9.0);
            assertThat(estimate.utilisation() * estimate.lengthMm())
                    .isCloseTo(plan.utilisation() * plan.lengthMm(), within(1e-3));
            assertThat(estimate.planned()).isFalse();
        });
    }

    /** By hand: two parts and the kerf between them fill a bar. */
    @Test
    void theLastCutMayRunOffTheBar() {
        assertThat(BarEstimate.of(List.of(new Cut("S1", 2988.5, 4)), List.of(BAR))
                        .count())
                .isEqualTo(2);
        assertThat(BarEstimate.of(List.of(new Cut("S1", 2988.6, 4)), List.of(BAR))
                        .count())
                .isEqualTo(4);
    }

    @Test
    void theCheapestBarThatIsLongEnoughIsTaken() {
        List<Cut> cuts = List.of(new Cut("S1", 2400, 4));
        assertThat(BarEstimate.of(cuts, List.of(priced(2000, 1), priced(2500, 10), priced(5000, 19)))
                        .price())
                .hasValue(38);
        assertThat(BarEstimate.of(cuts, List.of(BAR, new Bar(4900, 3, 0, Terms.OPEN)))
                        .lengthMm())
                .isEqualTo(9800);
    }

    @Test
    void whatIsLongerThanEveryBarIsNamed() {
        List<Cut> cuts = List.of(new Cut("S1", 500, 4), new Cut("S2", 5990, 4));
        assertThatExceptionOfType(CalotteException.class)
                .isThrownBy(() -> BarEstimate.of(cuts, List.of(BAR)))
                .withMessageContaining("S2")
                .withMessageContaining("frame.bar.length");
    }
}
