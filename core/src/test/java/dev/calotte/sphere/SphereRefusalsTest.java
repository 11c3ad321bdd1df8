package dev.calotte.sphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem;
import dev.calotte.problem.Problem.Code;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SphereRefusalsTest {

    private static Problem refusal(Solid solid, Breakdown breakdown, Spacing spacing) {
        return catchThrowableOfType(CalotteException.class, () -> SphereMesh.of(solid, breakdown, spacing))
                .problems()
                .get(0);
    }

    @ParameterizedTest
    @CsvSource({"1, 1, ARC, II", "2, 2, MIDARC, II", "2, 1, ARC, III", "1, 3, MIDARC, III"})
    void arcsExistForClassOneOnly(int b, int c, Spacing spacing, String roman) {
        Problem problem = refusal(Solid.ICOSAHEDRON, new Breakdown(b, c), spacing);
        assertThat(problem.code()).isEqualTo(Code.CONFLICT);
        assertThat(problem.where()).isEqualTo("dome.spacing");
        assertThat(problem.what())
                .contains("[" + b + ", " + c + "] is of class " + roman + ",")
                .contains(spacing == Spacing.ARC ? "and arc" : "and midarc");
    }

    @ParameterizedTest
    @CsvSource({"3, 2 or 4", "5, 4 or 8", "6, 4 or 8", "12, 8 or 16"})
    void midarcNeedsAPowerOfTwo(int n, String near) {
        Problem problem = refusal(Solid.OCTAHEDRON, Breakdown.of(n), Spacing.MIDARC);
        assertThat(problem.code()).isEqualTo(Code.CONFLICT);
        assertThat(problem.where()).isEqualTo("dome.spacing");
        assertThat(problem.mend()).contains(near);
    }

    @Test
    void moreThanAHundredMillionPanelsAreTooLarge() {
        Problem problem = refusal(Solid.ICOSAHEDRON, Breakdown.of(2237), Spacing.CHORD);
        assertThat(problem.code()).isEqualTo(Code.TOO_LARGE);
        assertThat(problem.where()).isEqualTo("dome.breakdown");
        assertThat(problem.what()).contains("[2237, 0]").contains("100083380");
    }

    @ParameterizedTest
    @ValueSource(ints = {100_000, 1_000_000_000, Integer.MAX_VALUE})
    void noNumberIsTooLargeToBeToldSo(int steps) {
        for (Solid solid : Solid.values()) {
            for (Breakdown breakdown : new Breakdown[] {Breakdown.of(steps), new Breakdown(steps, steps)}) {
                Problem problem = refusal(solid, breakdown, Spacing.CHORD);
                assertThat(problem.code()).isEqualTo(Code.TOO_LARGE);
                assertThat(problem.what()).contains(breakdown.toString()).doesNotContain(" -");
            }
        }
    }
}
