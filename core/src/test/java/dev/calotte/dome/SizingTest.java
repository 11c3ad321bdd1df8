package dev.calotte.dome;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.dome.Size.Measure;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem;
import dev.calotte.problem.Problem.Code;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import dev.calotte.sphere.Up;
import dev.calotte.testing.Cases;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class SizingTest {

    private static final DomeSpec SPHERE = DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(4), Size.radius(3000));

    static double measured(Dome dome, Measure measure) {
        return switch (measure) {
            case RADIUS -> dome.measures().radiusMm();
            case FLOOR_DIAMETER -> dome.measures().floorDiameterMm();
            case HEIGHT -> dome.measures().heightMm();
            case FLOOR_AREA -> dome.measures().floorAreaMm2();
            case LONGEST_STRUT ->
                dome.struts().stream().mapToDouble(Strut::lengthMm).max().orElseThrow();
        };
    }

    private static double given(Measure measure) {
        return measure == Measure.FLOOR_AREA ? 25e6 : 4321;
    }

    @ParameterizedTest
    @EnumSource(Measure.class)
    void rowsAreBuiltInTheSizeGiven(Measure measure) {
        double value = given(measure);
        Dome dome = Dome.of(SPHERE.withKeep(new Keep.Rows(5, 12)).withSize(new Size(measure, value)));
        assertThat(measured(dome, measure)).isCloseTo(value, within(1e-12 * value));
    }

    @ParameterizedTest
    @EnumSource(Measure.class)
    void theHalfIsBuiltInTheSizeGiven(Measure measure) {
        double value = given(measure);
        for (Up up : Up.values()) {
            Dome dome =
                    Dome.of(SPHERE.withUp(up).withKeep(new Keep.AboveHeight(0)).withSize(new Size(measure, value)));
            assertThat(measured(dome, measure)).isCloseTo(value, within(1e-12 * value));
        }
    }

    @ParameterizedTest
    @EnumSource(
            names = {"RADIUS", "HEIGHT", "LONGEST_STRUT"},
            value = Measure.class)
    void theWholeIsBuiltInTheSizeGiven(Measure measure) {
        Dome dome = Dome.of(SPHERE.withSize(new Size(measure, 4321)));
        assertThat(measured(dome, measure)).isCloseTo(4321, within(1e-12 * 4321));
    }

    @ParameterizedTest
    @EnumSource(
            names = {"FLOOR_DIAMETER", "FLOOR_AREA"},
            value = Measure.class)
    void theWholeHasNoFloorToBeSizedBy(Measure measure) {
        Problem problem = catchThrowableOfType(
                        CalotteException.class, () -> Dome.of(SPHERE.withSize(new Size(measure, 4321))))
                .problems()
                .get(0);
        assertThat(problem.code()).isEqualTo(Code.CONFLICT);
        assertThat(problem.where())
                .isEqualTo(measure == Measure.FLOOR_AREA ? "size.floor-area" : "size.floor-diameter");
    }

    /** A dome above a height is found again from any of its measures, or a larger one that has the same. */
    @ParameterizedTest
    @EnumSource(Measure.class)
    void aDomeAboveAHeightIsFoundByEachOfItsMeasures(Measure measure) {
        Cases.each(40, (random, size) -> {
            DomeSpec spec = anyCap(random);
            Dome dome = Dome.of(spec);
            double value = measured(dome, measure);
            Dome found = Dome.of(spec.withSize(new Size(measure, value)));
            assertThat(measured(found, measure)).isCloseTo(value, within(1e-9 * value));
            assertThat(found.radiusMm()).isGreaterThan(dome.radiusMm() * (1 - 1e-9));
        });
    }

    private static DomeSpec anyCap(Random random) {
        double radius = 1000 + 5000 * random.nextDouble();
        double height = radius * (random.nextDouble() * 0.8 - 0.5);
        return DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(3 + random.nextInt(3)), Size.radius(radius))
                .withKeep(new Keep.AboveHeight(height));
    }

    @ParameterizedTest
    @CsvSource({
        "HEIGHT, 500, 2500", "HEIGHT, -700, 2500", "FLOOR_DIAMETER, 400, 6000", "FLOOR_DIAMETER, -400, 6000",
        "FLOOR_AREA, 300, 30e6", "FLOOR_AREA, -300, 30e6", "LONGEST_STRUT, 500, 1200", "LONGEST_STRUT, -500, 1200"
    })
    void whatStaysIsAboveTheHeightAndOfTheSize(Measure measure, double height, double value) {
        Dome dome = Dome.of(SPHERE.withKeep(new Keep.AboveHeight(height)).withSize(new Size(measure, value)));
        assertThat(measured(dome, measure)).isCloseTo(value, within(1e-9 * value));
        Dome again = Dome.of(SPHERE.withKeep(new Keep.AboveHeight(height)).withSize(Size.radius(dome.radiusMm())));
        assertThat(again.panels()).isEqualTo(dome.panels());
        assertThat(dome.hubs()).allMatch(hub -> hub.position().getZ() > height - 1e-8 * dome.radiusMm());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void aSizeOfNothingIsRefused(double value) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Size.radius(value))
                .withMessageContaining("RADIUS of " + value);
    }

    @Test
    void everythingIsInProportionToTheRadius() {
        Measures one = Dome.of(SPHERE.withKeep(new Keep.Rows(5, 12)).withSize(Size.radius(1)))
                .measures();
        Measures two = Dome.of(SPHERE.withKeep(new Keep.Rows(5, 12)).withSize(Size.radius(2)))
                .measures();
        assertThat(two)
                .isEqualTo(new Measures(
                        2,
                        2 * one.floorDiameterMm(),
                        2 * one.heightMm(),
                        4 * one.floorAreaMm2(),
                        4 * one.surfaceAreaMm2(),
                        8 * one.volumeMm3(),
                        2 * one.baseSpreadMm()));
    }
}
