package dev.calotte.laws;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.dome.Dome;
import dev.calotte.dome.Keep;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Fitting;
import dev.calotte.sphere.Solid;
import dev.calotte.sphere.Spacing;
import dev.calotte.sphere.Up;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Which floors are level. */
class FlatFloorLawsTest {

    private static double spread(Solid solid, int n, Spacing spacing, int kept, int of) {
        Dome dome = Dome.of(Samples.spec(solid, Breakdown.of(n))
                .withSpacing(spacing)
                .withFitting(new Fitting(Fitting.Goal.WIDTH, 2))
                .withKeep(new Keep.Rows(kept, of)));
        return dome.measures().baseSpreadMm() / Samples.R;
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 4, 6, 8, 10})
    void halfAnIcosahedronOfEvenFrequencyIsLevel(int n) {
        assertThat(spread(Solid.ICOSAHEDRON, n, Spacing.CHORD, 1, 2)).isLessThan(1e-12);
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 4, 8})
    void halfAnIcosahedronHalvedAgainAndAgainIsLevel(int n) {
        assertThat(spread(Solid.ICOSAHEDRON, n, Spacing.MIDARC, 1, 2)).isLessThan(1e-12);
    }

    @ParameterizedTest
    @ValueSource(ints = {4, 6, 8})
    void halfAnIcosahedronOfEqualArcsIsNot(int n) {
        assertThat(spread(Solid.ICOSAHEDRON, n, Spacing.ARC, 1, 2)).isGreaterThan(0.01);
    }

    @ParameterizedTest
    @ValueSource(ints = {3, 5, 7})
    void oddFrequenciesAreNotLevelNearTheMiddle(int n) {
        assertThat(spread(Solid.ICOSAHEDRON, n, Spacing.CHORD, (3 * n - 1) / 2, 3 * n))
                .isGreaterThan(1e-3);
        assertThat(spread(Solid.ICOSAHEDRON, n, Spacing.CHORD, (3 * n + 1) / 2, 3 * n))
                .isGreaterThan(1e-3);
    }

    @ParameterizedTest
    @CsvSource({
        "4, ARC, 1, 2, 0.0300",
        "3, CHORD, 4, 9, 0.0160",
        "3, CHORD, 5, 9, 0.0160",
        "3, ARC, 4, 9, 0.0315",
        "6, CHORD, 4, 9, 0.0160",
        "6, CHORD, 5, 9, 0.0160",
        "4, CHORD, 5, 12, 0.0252",
        "4, CHORD, 7, 12, 0.0252",
        "2, CHORD, 1, 3, 0.0785",
        "8, CHORD, 1, 3, 0.0785",
        "8, CHORD, 5, 8, 0.0515"
    })
    void knownFloorsSpreadAsMuch(int n, Spacing spacing, int kept, int of, double known) {
        assertThat(spread(Solid.ICOSAHEDRON, n, spacing, kept, of)).isCloseTo(known, within(5e-5));
    }

    @ParameterizedTest
    @EnumSource(Spacing.class)
    void halfAnOctahedronIsLevel(Spacing spacing) {
        for (int n = 1; n <= 8; n++) {
            if (spacing != Spacing.MIDARC || Integer.bitCount(n) == 1) {
                assertThat(spread(Solid.OCTAHEDRON, n, spacing, 1, 2)).isLessThan(1e-12);
            }
        }
    }

    @Test
    void otherCrownsAndClassesAreNotLevel() {
        Keep half = new Keep.AboveHeight(0);
        for (Up up : new Up[] {Up.EDGE, Up.FACE}) {
            for (int n : new int[] {2, 3, 6}) {
                Dome dome = Dome.of(Samples.spec(Solid.ICOSAHEDRON, Breakdown.of(n))
                        .withUp(up)
                        .withKeep(half));
                assertThat(dome.measures().baseSpreadMm() / Samples.R).isBetween(0.1, 0.36);
            }
        }
        Dome classThree =
                Dome.of(Samples.spec(Solid.ICOSAHEDRON, new Breakdown(2, 1)).withKeep(half));
        assertThat(classThree.measures().baseSpreadMm() / Samples.R).isBetween(0.1, 0.36);
    }

    @Test
    void above0IsTheHalfWithWholePanels() {
        for (int n = 2; n <= 7; n++) {
            Dome above =
                    Dome.of(Samples.spec(Solid.ICOSAHEDRON, Breakdown.of(n)).withKeep(new Keep.AboveHeight(0)));
            Dome rows =
                    Dome.of(Samples.spec(Solid.ICOSAHEDRON, Breakdown.of(n)).withKeep(new Keep.Rows(3 * n / 2, 3 * n)));
            assertThat(above.panels()).isEqualTo(rows.panels());
        }
    }
}
