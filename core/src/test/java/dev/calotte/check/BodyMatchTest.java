package dev.calotte.check;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.export.Facets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BodyMatchTest {

    private static final float[] TETRAHEDRON = {
        0, 0, 0, 0, 40, 0, 30, 0, 0, 0, 0, 0, 30, 0, 0, 10, 10, 25, 30, 0, 0, 0, 40, 0, 10, 10, 25, 0, 40, 0, 0, 0, 0,
        10, 10, 25
    };

    private static float[] times(double scale, int axis) {
        float[] xyz = TETRAHEDRON.clone();
        for (int i = 0; i < xyz.length; i++) {
            xyz[i] *= i % 3 == axis || axis < 0 ? (float) scale : 1;
        }
        return xyz;
    }

    private static List<String> found(float[] body, float[] solid) {
        return Found.list(findings ->
                        BodyMatch.of("H1", new Facets("", body), "stl/H1.stl", new Facets("", solid), findings))
                .stream()
                .map(finding -> finding.fault() + " " + finding.place() + ": " + finding.what())
                .toList();
    }

    /** Where facets begin, and in which order they stand, is not asked. */
    @Test
    void theSameBodyInAnotherOrderIsTheSame() {
        float[] other = new float[36];
        for (int i = 0; i < 36; i++) {
            other[i] = TETRAHEDRON[(i + 9) % 36];
        }
        float[] turned = TETRAHEDRON.clone();
        System.arraycopy(TETRAHEDRON, 3, turned, 0, 6);
        System.arraycopy(TETRAHEDRON, 0, turned, 6, 3);
        assertThat(found(other, TETRAHEDRON)).isEmpty();
        assertThat(found(turned, TETRAHEDRON)).isEmpty();
        assertThat(found(times(1 + 1e-6, -1), TETRAHEDRON)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"25.4, 25.4", "1.01, 1.01"})
    void aScaledBodyIsFound(double scale, String text) {
        assertThat(found(times(scale, -1), TETRAHEDRON))
                .singleElement()
                .asString()
                .startsWith("SCALED H1: it is " + text)
                .endsWith("times as large as in stl/H1.stl.");
    }

    @Test
    void otherFacetsAreFound() {
        assertThat(found(times(1.01, 0), TETRAHEDRON))
                .containsExactly(
                        "DIFFERENT H1: of its 4 facets 4 are not in stl/H1.stl, and 4 of those are not here, the"
                                + " first near x 10.00, y 13.33, z 0.00 mm.");
        float[] flipped = TETRAHEDRON.clone();
        System.arraycopy(TETRAHEDRON, 0, flipped, 3, 3);
        System.arraycopy(TETRAHEDRON, 3, flipped, 0, 3);
        assertThat(found(flipped, TETRAHEDRON)).hasSize(1);
        assertThat(found(new float[0], TETRAHEDRON)).hasSize(1);
        assertThat(found(TETRAHEDRON, new float[0]))
                .containsExactly(
                        "DIFFERENT H1: of its 4 facets 4 are not in stl/H1.stl, and 0 of those are not here, the"
                                + " first near its other facets.");
    }
}
