package dev.calotte.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MassTest {

    /** A pound is 0.45359237 kg exactly (international agreement of 1959). */
    @ParameterizedTest
    @CsvSource({"0.69 kg, 0.69", "1700 g, 1.7", "1lb, 0.45359237", "1/2 kg, 0.5", "0 kg, 0", "1000000 kg, 1000000"})
    void textsMeanExactlyTheseKilograms(String text, double kg) {
        assertThat(Mass.parseKg(text)).isEqualTo(kg);
    }

    @Test
    void bareNumbersLackTheUnit() {
        UnitException refusal = catchThrowableOfType(UnitException.class, () -> Mass.parseKg("20"));
        assertThat(refusal.what()).isEqualTo("20 has no unit.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "kg", "20 m", "-1 kg", "1,5 kg", "1000001 kg"})
    void everythingElseIsRefused(String text) {
        assertThat(catchThrowableOfType(UnitException.class, () -> Mass.parseKg(text)))
                .isNotNull();
    }
}
