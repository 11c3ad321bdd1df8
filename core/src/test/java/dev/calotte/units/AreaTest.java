package dev.calotte.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AreaTest {

    @ParameterizedTest
    @CsvSource({
        "20 m², 20000000",
        "20 m2, 20000000",
        "20m2, 20000000",
        "30000 cm2, 3000000",
        "30000 cm², 3000000",
        "5 mm2, 5",
        "200 ft², 18580608",
        "200 ft2, 18580608",
        "200 sq ft, 18580608",
        "1/2 m2, 500000",
        "-1 m2, -1000000",
    })
    void textsMeanExactlyTheseSquareMillimetres(String text, double mm2) {
        assertThat(Area.parseMm2(text)).isEqualTo(mm2);
    }

    @Test
    void bareNumbersLackTheUnit() {
        UnitException refusal = catchThrowableOfType(UnitException.class, () -> Area.parseMm2("20"));
        assertThat(refusal.what()).isEqualTo("20 has no unit.");
        assertThat(refusal.mend()).startsWith("Give the unit");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "m2", "20 m", "20 m3", "20 acres", "20 sq  ft x", "20,5 m2", "1e18 m2", "2000000000000 m2"})
    void everythingElseIsRefused(String text) {
        assertThat(catchThrowableOfType(UnitException.class, () -> Area.parseMm2(text)))
                .isNotNull();
    }

    @Test
    void printedAreasReadBack() {
        assertThat(Area.parseMm2(UnitSystem.METRIC.area(31.2e6))).isEqualTo(31.2e6);
        assertThat(Area.parseMm2(UnitSystem.IMPERIAL.area(18580608))).isEqualTo(18580608);
    }
}
