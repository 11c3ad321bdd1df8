package dev.calotte.laws;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Strut;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import dev.calotte.sphere.Spacing;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Where the panels are hollow or flat. */
class HollowEdgeLawsTest {

    private static DoubleStream dihedralsDeg(DomeSpec spec) {
        return Dome.of(spec).struts().stream()
                .map(Strut::dihedralRad)
                .mapToDouble(angle -> Math.toDegrees(angle.orElseThrow()));
    }

    @ParameterizedTest
    @CsvSource({"4, CHORD, 181.8", "4, MIDARC, 194.3", "8, CHORD, 185.0"})
    void aFineTetrahedronHasHollowEdges(int n, Spacing spacing, double largest) {
        DomeSpec spec = Samples.spec(Solid.TETRAHEDRON, Breakdown.of(n)).withSpacing(spacing);
        assertThat(dihedralsDeg(spec).max().orElseThrow()).isCloseTo(largest, within(0.05));
    }

    @Test
    void aCoarseTetrahedronHasNone() {
        for (int n = 1; n <= 3; n++) {
            assertThat(dihedralsDeg(Samples.spec(Solid.TETRAHEDRON, Breakdown.of(n)))
                            .max()
                            .orElseThrow())
                    .isLessThan(180);
        }
    }

    @Test
    void theTetrahedronOfOneAndOneIsACube() {
        double[] angles = dihedralsDeg(Samples.spec(Solid.TETRAHEDRON, new Breakdown(1, 1)))
                .sorted()
                .toArray();
        assertThat(angles).hasSize(18);
        assertThat(DoubleStream.of(angles).limit(12))
                .allSatisfy(a -> assertThat(a).isCloseTo(90, within(1e-9)));
        assertThat(DoubleStream.of(angles).skip(12))
                .allSatisfy(a -> assertThat(a).isCloseTo(180, within(1e-6)));
    }

    @ParameterizedTest
    @MethodSource("dev.calotte.laws.Samples#spheres")
    void noOtherSolidHasAHollowEdge(DomeSpec spec) {
        if (spec.solid() != Solid.TETRAHEDRON) {
            assertThat(dihedralsDeg(spec).max().orElseThrow()).isLessThan(179.6);
        }
    }
}
