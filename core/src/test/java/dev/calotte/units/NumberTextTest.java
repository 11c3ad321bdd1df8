package dev.calotte.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.calotte.testing.Cases;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NumberTextTest {

    private final Locale before = Locale.getDefault();

    @AfterEach
    void restoreTheLocale() {
        Locale.setDefault(before);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 3, 0.000",
        "-0.0, 3, 0.000",
        "-0.0004, 3, 0.000",
        "-0.0005, 3, -0.001",
        "12.5, 3, 12.500",
        "-12.5, 1, -12.5",
        "0.5, 1, 0.5",
        "0.25, 1, 0.3",
        "-0.25, 1, -0.3",
        "0.375, 2, 0.38",
        "0.625, 2, 0.63",
        "0.0009765625, 9, 0.000976563",
        "99.96, 1, 100.0",
        "1e15, 1, 1000000000000000.0",
        "1e15, 12, 1000000000000000.000000000000",
        "-1e20, 2, -100000000000000000000.00",
        "1e-300, 12, 0.000000000000",
        "1.115, 2, 1.11",
        "1.005, 2, 1.00"
    })
    void fixedHasAllItsDigits(double value, int decimals, String text) {
        assertThat(NumberText.fixed(value, decimals)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 3, 0",
        "-0.0, 3, 0",
        "-0.0004, 3, 0",
        "12.5, 3, 12.5",
        "12, 3, 12",
        "100, 3, 100",
        "-100.10, 3, -100.1",
        "0.001, 3, 0.001",
        "1e15, 3, 1000000000000000",
        "0.9999, 3, 1"
    })
    void trimmedEndsWithItsLastDigit(double value, int decimals, String text) {
        assertThat(NumberText.trimmed(value, decimals)).isEqualTo(text);
    }

    @Test
    void appendingLeavesWhatIsThere() {
        StringBuilder text = new StringBuilder("x=0");
        NumberText.appendTrimmed(text, 0, 2);
        text.append(" y=");
        NumberText.appendFixed(text, 1.5, 2);
        assertThat(text).hasToString("x=00 y=1.50");
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void whatIsNoNumberIsRefused(double value) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> NumberText.fixed(value, 3))
                .withMessageContaining(String.valueOf(value));
        assertThatIllegalArgumentException().isThrownBy(() -> NumberText.trimmed(value, 3));
    }

    @ParameterizedTest
    @ValueSource(strings = {"tr-TR", "de-DE", "ar-EG", "hi-IN-u-nu-deva"})
    void textIsTheSameInEveryLocale(String tag) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertThat(NumberText.fixed(-1234567.125, 2)).isEqualTo("-1234567.13");
        assertThat(NumberText.fixed(1e18, 1)).isEqualTo("1000000000000000000.0");
        assertThat(NumberText.trimmed(0.5, 3)).isEqualTo("0.5");
    }

    @Test
    void textAgreesWithExactDecimals() {
        Cases.each(5000, (random, size) -> {
            int decimals = 1 + random.nextInt(NumberText.MOST_DECIMALS);
            checkAgainstDecimal(anyNumber(random), decimals);
        });
    }

    /** Numbers that were written with one digit more than is kept, a 5: nearly halves, most of them not quite. */
    @Test
    void textAgreesWithExactDecimalsNearHalves() {
        Cases.each(5000, (random, size) -> {
            int decimals = 1 + random.nextInt(6);
            checkAgainstDecimal(Double.parseDouble(random.nextInt(1000 * size) + "5e-" + (decimals + 1)), decimals);
        });
    }

    private static double anyNumber(Random random) {
        return (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(24) - 6);
    }

    private static void checkAgainstDecimal(double value, int decimals) {
        String exact =
                new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
        assertThat(NumberText.fixed(value, decimals)).isEqualTo(exact);
    }
}
