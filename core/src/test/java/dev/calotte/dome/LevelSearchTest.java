package dev.calotte.dome;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.dome.Size.Measure;
import dev.calotte.problem.CalotteException;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sizes at which a row of panels just comes or just goes. */
class LevelSearchTest {

    private static final DomeSpec SPHERE = DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(4), Size.radius(1));

    /** The heights over the centre at which rows end, for radius 1. */
    private static double[] levels() {
        Ball ball = new Ball(SPHERE);
        return Arrays.stream(new int[] {10, 50, 100, 150, 200, 250, 300})
                .mapToDouble(ball::lowest)
                .filter(level -> Math.abs(level) > 0.05 && Math.abs(level) < 0.95)
                .distinct()
                .toArray();
    }

    private static Optional<Dome> dome(double heightMm, Measure measure, double value) {
        try {
            return Optional.of(
                    Dome.of(SPHERE.withKeep(new Keep.AboveHeight(heightMm)).withSize(new Size(measure, value))));
        } catch (CalotteException none) {
            return Optional.empty();
        }
    }

    @ParameterizedTest
    @CsvSource({"HEIGHT", "FLOOR_DIAMETER", "FLOOR_AREA", "LONGEST_STRUT"})
    void aDomeWhoseLastRowEndsAtTheHeightIsFound(Measure measure) {
        for (double level : levels()) {
            for (double radius = 1000; radius < 1005; radius += 0.7) {
                Dome exact = dome(level * radius, Measure.RADIUS, radius).orElseThrow();
                double value = SizingTest.measured(exact, measure);
                Dome found = dome(level * radius, measure, value).orElseThrow();
                assertThat(SizingTest.measured(found, measure)).isCloseTo(value, within(1e-12 * value));
                assertThat(found.radiusMm()).isGreaterThanOrEqualTo(radius * (1 - 1e-9));
            }
        }
    }

    /** Seen from the other side the row is still there, so no dome has the size that it would have without. */
    @ParameterizedTest
    @CsvSource({"HEIGHT", "FLOOR_DIAMETER", "FLOOR_AREA", "LONGEST_STRUT"})
    void aSizeJustOutOfReachIsNeverBuiltAsAnother(Measure measure) {
        int power = measure == Measure.FLOOR_AREA ? 2 : 1;
        for (double level : levels()) {
            for (double before : new double[] {1 - 1e-7, 1 + 1e-7}) {
                Dome near = dome(level * 1000, Measure.RADIUS, 1000 * before).orElseThrow();
                double limit = SizingTest.measured(near, measure) / Math.pow(before, power);
                dome(level * 1000, measure, limit)
                        .ifPresent(dome ->
                                assertThat(SizingTest.measured(dome, measure)).isCloseTo(limit, within(1e-9 * limit)));
            }
        }
    }
}
