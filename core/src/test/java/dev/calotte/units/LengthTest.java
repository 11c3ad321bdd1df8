package dev.calotte.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.Random;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class LengthTest {

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '`',
            value = {
                "3.2 m, 3200",
                "1220 mm, 1220",
                "122 cm, 1220",
                "4.35 m, 4350",
                "0.1 m, 100",
                ".5 cm, 5",
                "3.2m, 3200",
                "4' 7 1/4\", 1403.35",
                "4'7 1/4\", 1403.35",
                "4', 1219.2",
                "4.5 ft, 1371.6",
                "7 1/4\", 184.15",
                "10 ft, 3048",
                "3/4 in, 19.05",
                "3 / 4 in, -",
                "10 ft 3 1/2 in, 3136.9",
                "10ft 3 1/2in, 3136.9",
                "1' 0\", 304.8",
                "0\", 0",
                "1/3 in, 8.466666666666667",
                "4′ 7 1/4″, 1403.35",
                "4’ 7”, 1397",
                "4' 7 1/4\" , 1403.35",
                "-3/4 in, -19.05",
                "-4' 7 1/4\", -1403.35",
                "−20 mm, -20",
                "1220, 1220",
                "1 1/2, 1.5",
                "1000 km, -",
                "1000000 m, 1000000000",
            })
    void textsMeanExactlyTheseMillimetres(String text, String mm) {
        if (mm.equals("-")) {
            assertThat(refusal(text, UnitSystem.METRIC)).isNotNull();
        } else {
            assertThat(Length.parseMm(text, UnitSystem.METRIC)).isEqualTo(Double.parseDouble(mm));
        }
    }

    @ParameterizedTest
    @CsvSource({"48, 1219.2", "7 1/4, 184.15", "3/4, 19.05", "-1, -25.4", "0, 0", "1220 mm, 1220"})
    void bareNumbersAreInchesInImperialBriefs(String text, double mm) {
        assertThat(Length.parseMm(text, UnitSystem.IMPERIAL)).isEqualTo(mm);
    }

    @Test
    void minusNothingIsNothing() {
        assertThat(Double.doubleToLongBits(Length.parseMm("-0 mm", UnitSystem.METRIC)))
                .isZero();
    }

    @ParameterizedTest
    @ValueSource(strings = {"3,2 m", "1,220 mm", "4' 7,5\""})
    void commasAreRefusedWithAPointAsTheMend(String text) {
        assertThat(refusal(text, UnitSystem.METRIC).what()).isEqualTo(text + " has a comma.");
        assertThat(refusal(text, UnitSystem.METRIC).mend()).startsWith("Use a point");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "m",
                "mm 3",
                "3 parsec",
                "3 M",
                "3 MM",
                "3 mm mm",
                "3 m 20 cm",
                "3 mm 4",
                "--3 mm",
                "3 -4 mm",
                "4' -7\"",
                "+3 mm",
                "3. m",
                ".",
                "1.5.2 m",
                "1e3 mm",
                "0x10 mm",
                "NaN",
                "Infinity mm",
                "1/0 in",
                "/2 in",
                "1/ in",
                "1/2/3 in",
                "1.5/2 in",
                "1 5/4 in",
                "3 4 in",
                "4' 7",
                "4' 7 1/4",
                "4' 12\"",
                "4.5' 3\"",
                "4 1/2' 3\"",
                "4' 7\" 3\"",
                "7\" 4'",
                "3 mm x",
                "3 µm",
                "٣ mm",
                "３ mm",
                "½ in",
                "1000000.001 m",
                "99999999999999999999999999999999999999999999 mm"
            })
    void everythingElseIsRefusedWithAMend(String text) {
        UnitException refusal = refusal(text, UnitSystem.METRIC);
        assertThat(refusal.what()).isNotBlank().endsWith(".");
        assertThat(refusal.mend()).isNotBlank().endsWith(".");
        assertThat(refusal).hasMessage(refusal.what() + " " + refusal.mend());
    }

    @Test
    void textsOfMoreThanSixtyFourCharactersAreNotEchoed() {
        assertThat(Length.parseMm(" ".repeat(59) + "12 mm", UnitSystem.METRIC)).isEqualTo(12);
        assertThat(refusal("9".repeat(65), UnitSystem.METRIC).what())
                .contains("65 characters")
                .doesNotContain("999");
    }

    @Test
    void charactersThatCannotBeSeenAreNotEchoed() {
        assertThat(refusal("3 \u001b[31m", UnitSystem.METRIC).what())
                .isEqualTo("the text holds characters that cannot be seen.");
        assertThat(refusal("3 \u202emm", UnitSystem.METRIC).what())
                .isEqualTo("the text holds characters that cannot be seen.");
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void whatIsPrintedReadsBackWithinHalfOfTheSmallestStep(UnitSystem units) {
        double half = units == UnitSystem.METRIC ? 0.5 : Length.INCH_MM / 32;
        Random random = new Random(20260101);
        for (int i = 0; i < 5000; i++) {
            double mm = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(9));
            String text = units.length(mm);
            assertThat(Length.parseMm(text, units))
                    .as("seed 20260101, %s printed as %s", mm, text)
                    .isCloseTo(mm, within(half * (1 + 1e-9)));
        }
    }

    @Test
    void noiseIsReadOrRefusedAndNeverHangs() {
        String alphabet = "0123456789 ./'\"-mftincqs,°²′″\t\u00a0\ud800x";
        Random random = new Random(7);
        Assertions.assertTimeoutPreemptively(Duration.ofSeconds(20), () -> {
            for (int i = 0; i < 50_000; i++) {
                StringBuilder text = new StringBuilder();
                for (int k = random.nextInt(12); k >= 0; k--) {
                    text.append(alphabet.charAt(random.nextInt(alphabet.length())));
                }
                try {
                    assertThat(Length.parseMm(text.toString(), UnitSystem.IMPERIAL))
                            .isFinite();
                } catch (UnitException e) {
                    assertThat(e.mend()).isNotBlank();
                }
            }
        });
    }

    private static UnitException refusal(String text, UnitSystem bare) {
        return catchThrowableOfType(UnitException.class, () -> Length.parseMm(text, bare));
    }
}
