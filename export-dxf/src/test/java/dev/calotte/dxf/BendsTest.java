package dev.calotte.dxf;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BendsTest {

    /** By hand: the chord from (1, 1) to (4, 5) is 5 long, so it rises 2.5 times its bulge; half a millionth is the limit. */
    @ParameterizedTest
    @CsvSource({"0, false", "1.9e-7, false", "-1.9e-7, false", "2.1e-7, true", "-2.1e-7, true", "0.4, true"})
    void aSideIsAnArcIfItRisesHalfOfTheLastDecimal(double bulge, boolean bends) {
        Polyline path = Polyline.open(Operation.SCORE, new double[] {1, 1, 4, 5}, new double[] {bulge, 0});
        assertThat(Bends.bends(path, 0)).isEqualTo(bends);
    }

    @Test
    void theLastSideOfAClosedPathEndsAtItsFirstCorner() {
        Polyline path = Polyline.closed(Operation.SCORE, new double[] {4, 5, 9, 9, 1, 1}, new double[] {0, 0, 2.1e-7});
        assertThat(Bends.bends(path, 2)).isTrue();
        assertThat(Bends.bends(path, 1)).isFalse();
    }
}
