package dev.calotte.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.testing.Cases;
import org.junit.jupiter.api.Test;

class CompoundCutTest {

    /** The formulas for boxes with sloping sides, Snyder and Gottesman, "Compound-Angle Joinery". */
    @Test
    void equalTiltsAreTheCutsOfABox() {
        Cases.each(200, (random, size) -> {
            double corner = 0.1 + 2.9 * random.nextDouble();
            double tilt = 2.8 * (random.nextDouble() - 0.5);
            CompoundCut cut = CompoundCut.of(corner, tilt, tilt);
            assertThat(StrictMath.sin(cut.bladeTiltRad()))
                    .isCloseTo(StrictMath.cos(tilt) * StrictMath.cos(corner / 2), within(1e-9));
            assertThat(StrictMath.tan(cut.gauge1Rad()))
                    .isCloseTo(StrictMath.sin(tilt) / StrictMath.tan(corner / 2), within(1e-9));
            assertThat(cut.gauge2Rad()).isEqualTo(cut.gauge1Rad());
        });
    }

    @Test
    void theBoardsChangePlaces() {
        CompoundCut cut = CompoundCut.of(1, 0.1, 0.2);
        CompoundCut other = CompoundCut.of(1, 0.2, 0.1);
        assertThat(other.bladeTiltRad()).isEqualTo(cut.bladeTiltRad());
        assertThat(other.gauge1Rad()).isEqualTo(cut.gauge2Rad()).isNotEqualTo(cut.gauge1Rad());
    }

    @Test
    void anglesThatNoBoardHasAreRefused() {
        for (double wrong : new double[] {0, -1, Math.PI, Double.NaN}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> CompoundCut.of(wrong, 0, 0))
                    .withMessageContaining("corner");
        }
        for (double wrong : new double[] {Math.PI / 2, -Math.PI / 2, Double.NaN}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> CompoundCut.of(1, wrong, 0))
                    .withMessageContaining("tilted");
            assertThatIllegalArgumentException().isThrownBy(() -> CompoundCut.of(1, 0, wrong));
        }
    }
}
