package dev.calotte.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class UnitSystemTest {

    @ParameterizedTest
    @CsvSource({
        "1084.3, 0, 1084 mm",
        "1084.3, 1, 1084.3 mm",
        "1084.25, 1, 1084.3 mm",
        "0.5, 0, 1 mm",
        "-0.5, 0, -1 mm",
        "-0.4, 0, 0 mm",
        "0, 2, 0.00 mm",
        "1200000, 0, 1200000 mm",
    })
    void metricLengthsAreMillimetres(double mm, int decimals, String text) {
        assertThat(UnitSystem.METRIC.length(mm, decimals)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '`',
            value = {
                "0, 0\"",
                "42.6875, 3' 6 11/16\"",
                "11.96, 11 15/16\"",
                "11.96875, 1' 0\"",
                "11.99, 1' 0\"",
                "12, 1' 0\"",
                "23.97, 2' 0\"",
                "0.03, 0\"",
                "0.03125, 1/16\"",
                "0.5, 1/2\"",
                "0.75, 3/4\"",
                "7.25, 7 1/4\"",
                "6, 6\"",
                "-42.6875, -3' 6 11/16\"",
                "-0.01, 0\"",
                "63360, 5280' 0\"",
            })
    void imperialLengthsCarryReduceAndKeepTheirSign(double inches, String text) {
        assertThat(UnitSystem.IMPERIAL.length(inches * Length.INCH_MM)).isEqualTo(text);
    }

    @Test
    void decimalsOfAMillimetreDoNotChangeSixteenths() {
        assertThat(UnitSystem.IMPERIAL.length(1084.2625, 3)).isEqualTo("3' 6 11/16\"");
    }

    @Test
    void areasAndVolumesHaveTwoDecimals() {
        assertThat(UnitSystem.METRIC.area(31.2e6)).isEqualTo("31.20 m²");
        assertThat(UnitSystem.METRIC.volume(63.409e9)).isEqualTo("63.41 m³");
        assertThat(UnitSystem.IMPERIAL.area(31.2e6)).isEqualTo("335.83 sq ft");
        assertThat(UnitSystem.IMPERIAL.volume(63.41e9)).isEqualTo("2239.30 cu ft");
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void whatIsNoNumberIsNotPrinted(UnitSystem units) {
        assertThatThrownBy(() -> units.length(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> units.length(Double.NEGATIVE_INFINITY)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> units.area(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"tr", "de", "ar-EG-u-nu-arab"})
    void everyLocalePrintsTheSame(String tag) {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag(tag));
            assertThat(UnitSystem.METRIC.length(1084.3, 1)).isEqualTo("1084.3 mm");
            assertThat(UnitSystem.IMPERIAL.length(1084.2625)).isEqualTo("3' 6 11/16\"");
            assertThat(Length.parseMm("4' 7 1/4\"", UnitSystem.METRIC)).isEqualTo(1403.35);
            assertThat(Angle.text(Math.PI / 24, 1)).isEqualTo("7.5°");
        } finally {
            Locale.setDefault(before);
        }
    }

    /** By hand: each is the last place of what is printed. */
    @Test
    void theLeastDifferencesAreThoseThatShow() {
        for (UnitSystem units : UnitSystem.values()) {
            double mm = units.leastLengthMm();
            assertThat(units.length(1000 * mm)).isNotEqualTo(units.length(1001 * mm));
            assertThat(units.area(1000 * units.leastAreaMm2())).isNotEqualTo(units.area(1001 * units.leastAreaMm2()));
        }
        assertThat(UnitSystem.METRIC.length(UnitSystem.METRIC.leastLengthMm())).isEqualTo("1 mm");
        assertThat(UnitSystem.IMPERIAL.length(UnitSystem.IMPERIAL.leastLengthMm()))
                .isEqualTo("1/16\"");
        assertThat(UnitSystem.METRIC.area(UnitSystem.METRIC.leastAreaMm2())).isEqualTo("0.01 m²");
        assertThat(UnitSystem.IMPERIAL.area(UnitSystem.IMPERIAL.leastAreaMm2())).isEqualTo("0.01 sq ft");
    }
}
