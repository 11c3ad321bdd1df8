package dev.calotte.dome;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.dome.Size.Measure;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem;
import dev.calotte.problem.Problem.Code;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import dev.calotte.sphere.Up;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class KeepRefusalsTest {

    private static final DomeSpec SPHERE = DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(4), Size.radius(1000));
    private static final Pattern NEAREST =
            Pattern.compile("The nearest sizes are ([0-9.]+) (mm|m²) and ([0-9.]+) (mm|m²)\\.");

    private static Problem refusal(DomeSpec spec) {
        return catchThrowableOfType(CalotteException.class, () -> Dome.of(spec))
                .problems()
                .get(0);
    }

    @Test
    void nothingStaysAboveTheTop() {
        for (double height : new double[] {980, 1000, 5000}) {
            Problem problem = refusal(SPHERE.withKeep(new Keep.AboveHeight(height)));
            assertThat(problem.code()).isEqualTo(Code.IMPOSSIBLE);
            assertThat(problem.where()).isEqualTo("dome.keep");
            assertThat(problem.what()).contains("no panel lies wholly above");
        }
    }

    @Test
    void whatTouchesItselfAtOneHubIsRefused() {
        DomeSpec spec = DomeSpec.of(Solid.TETRAHEDRON, new Breakdown(2, 2), Size.radius(1000))
                .withUp(Up.EDGE)
                .withKeep(new Keep.AboveHeight(600));
        assertThat(refusal(spec).code()).isEqualTo(Code.IMPOSSIBLE);
        assertThat(refusal(spec).what()).contains("touches itself at a single hub");
        assertThat(Dome.of(spec.withKeep(new Keep.AboveHeight(0))).baseRing()).isNotEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "HEIGHT, 500, 150",
        "HEIGHT, 500, 350",
        "FLOOR_AREA, 500, 62500",
        "FLOOR_AREA, -500, 62500",
        "FLOOR_DIAMETER, -500, 350",
        "FLOOR_AREA, -500, 90000",
        "HEIGHT, 500, 250"
    })
    void aSizeThatFallsIntoAGapNamesTheNearest(Measure measure, double height, double value) {
        DomeSpec above = SPHERE.withKeep(new Keep.AboveHeight(height));
        Problem problem = refusal(above.withSize(new Size(measure, value)));
        assertThat(problem.code()).isEqualTo(Code.IMPOSSIBLE);
        assertThat(problem.where())
                .isEqualTo("size." + measure.name().toLowerCase(Locale.ROOT).replace('_', '-'));
        Matcher nearest = NEAREST.matcher(problem.mend());
        assertThat(nearest.matches()).as(problem.mend()).isTrue();
        double unit = measure == Measure.FLOOR_AREA ? 1e6 : 1;
        double below = Double.parseDouble(nearest.group(1)) * unit;
        double beyond = Double.parseDouble(nearest.group(3)) * unit;
        assertThat(value).isStrictlyBetween(below, beyond);
        assertIsBorder(above, measure, below, -1);
        assertIsBorder(above, measure, beyond, 1);
    }

    /** A little away from the gap there is a dome, a little into it there is none. */
    private static void assertIsBorder(DomeSpec above, Measure measure, double border, int away) {
        double printed = measure == Measure.FLOOR_AREA ? 600 : 0.06;
        Dome dome = Dome.of(above.withSize(new Size(measure, border + away * printed)));
        assertThat(SizingTest.measured(dome, measure)).isCloseTo(border, within(2 * printed));
        assertThat(refusal(above.withSize(new Size(measure, border - away * printed))))
                .isNotNull();
    }

    @Test
    void aSizeBelowEveryDomeIsTold() {
        Problem problem =
                refusal(SPHERE.withKeep(new Keep.AboveHeight(500)).withSize(new Size(Measure.FLOOR_DIAMETER, 100)));
        assertThat(problem.what()).startsWith("no dome above that height measures 100.0 mm,");
        assertThat(problem.mend()).isEqualTo("Lower dome.keep.above, or give the radius.");
    }

    /** Below the whole sphere there is no floor, so no floor is nearest to a small one. */
    @Test
    void aSphereIsNoDomeWithANearlyEmptyFloor() {
        Problem problem =
                refusal(SPHERE.withKeep(new Keep.AboveHeight(-500)).withSize(new Size(Measure.FLOOR_AREA, 10_000)));
        assertThat(problem.mend()).doesNotContain("0.000");
    }

    @Test
    void aHeightBelowTheFootKeepsTheWhole() {
        Dome dome = Dome.of(SPHERE.withKeep(new Keep.AboveHeight(-1000)));
        assertThat(dome.baseRing()).isEmpty();
        Dome sized = Dome.of(SPHERE.withKeep(new Keep.AboveHeight(-1000)).withSize(new Size(Measure.HEIGHT, 1500)));
        assertThat(sized.radiusMm()).isCloseTo(750, within(1e-9));
    }
}
