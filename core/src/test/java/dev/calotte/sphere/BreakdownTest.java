package dev.calotte.sphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BreakdownTest {

    @ParameterizedTest
    @CsvSource({"1, 0, 1, 1, 1", "0, 3, 3, 9, 1", "4, 0, 4, 16, 1", "2, 2, 4, 12, 2", "3, 1, 4, 13, 3", "1, 3, 4, 13, 3"
    })
    void stepsDecideFrequencyTriangulationNumberAndClass(int b, int c, int frequency, long t, int classNumber) {
        Breakdown breakdown = new Breakdown(b, c);
        assertThat(breakdown.frequency()).isEqualTo(frequency);
        assertThat(breakdown.triangulationNumber()).isEqualTo(t);
        assertThat(breakdown.classNumber()).isEqualTo(classNumber);
        assertThat(breakdown).hasToString("[" + b + ", " + c + "]");
    }

    @Test
    void aNumberAloneIsOfClassOne() {
        assertThat(Breakdown.of(5)).isEqualTo(new Breakdown(5, 0));
    }

    @Test
    void triangulationNumberOutgrowsAnInt() {
        assertThat(new Breakdown(50_000, 50_000).triangulationNumber()).isEqualTo(7_500_000_000L);
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "-1, 3", "3, -1"})
    void stepsThatLeadNowhereAreRefused(int b, int c) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Breakdown(b, c))
                .withMessageContaining("[" + b + ", " + c + "]");
    }
}
