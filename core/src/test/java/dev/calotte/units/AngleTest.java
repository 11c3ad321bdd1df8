package dev.calotte.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AngleTest {

    @ParameterizedTest
    @CsvSource({"7.5°, 7.5", "7.5 deg, 7.5", "180 °, 180", "-30°, -30", "0 deg, 0", "1/2°, 0.5"})
    void textsMeanTheseDegrees(String text, double degrees) {
        assertThat(Angle.degrees(Angle.parseRad(text))).isCloseTo(degrees, within(1e-12));
        assertThat(Angle.parseRad(text)).isCloseTo(StrictMath.toRadians(degrees), within(1e-14));
    }

    @Test
    void textHasTheDecimalsAskedFor() {
        double rad = StrictMath.toRadians(7.46);
        assertThat(Angle.text(rad, 0)).isEqualTo("7°");
        assertThat(Angle.text(rad, 1)).isEqualTo("7.5°");
        assertThat(Angle.text(-rad, 3)).isEqualTo("-7.460°");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "7.5", "7,5°", "7.5 rad", "°", "7.5°°", "1000001°"})
    void everythingElseIsRefused(String text) {
        assertThat(catchThrowableOfType(UnitException.class, () -> Angle.parseRad(text)))
                .isNotNull();
    }
}
