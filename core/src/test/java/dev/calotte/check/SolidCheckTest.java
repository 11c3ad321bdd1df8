package dev.calotte.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import dev.calotte.export.Facets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A tetrahedron with three edges along the axes, 100, 50 and 20 mm long. */
class SolidCheckTest {

    private static final float[][] CORNERS = {{7, 7, 7}, {107, 7, 7}, {7, 57, 7}, {7, 7, 27}};
    private static final List<int[]> FACETS =
            List.of(new int[] {0, 2, 1}, new int[] {0, 1, 3}, new int[] {0, 3, 2}, new int[] {1, 2, 3});
    private static final String TITLE = "solid of calotte part=jigs/H1 size=100x50x20";

    private static Facets solid(String title, List<int[]> facets) {
        float[] xyz = new float[9 * facets.size()];
        for (int i = 0; i < xyz.length; i++) {
            xyz[i] = CORNERS[facets.get(i / 9)[i / 3 % 3]][i % 3];
        }
        return new Facets(title, xyz);
    }

    private static List<String> found(String title, List<int[]> facets) {
        return Found.by(findings -> SolidCheck.of("stl/jigs/H1", solid(title, facets), findings));
    }

    private static int[] turned(int[] facet) {
        return new int[] {facet[1], facet[0], facet[2]};
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                TITLE,
                "jigs/H1 size=100x50x20",
                "H1 size=100.0004x49.9996x20 by=calotte",
                "part=jigs/H1 size=100x50x20"
            })
    void nothingIsFoundInAClosedSolid(String title) {
        assertThat(found(title, FACETS)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "a tetrahedron",
                "part=jigs/H1",
                "part=jigs/H1 size=100x50",
                "jigs/H1 size=1.2.3x50x20",
                "H1 size=.x50x20"
            })
    void aTitleWithoutPartAndSizeIsFound(String title) {
        assertThat(found(title, FACETS)).containsExactly("CHANGED");
    }

    @Test
    void aTitleOfAnotherPartIsFound() {
        assertThat(Found.list(findings ->
                        SolidCheck.of("stl/jigs/H2", solid("part=jigs/H1 size=100x50x20", FACETS), findings)))
                .extracting(Finding::fault, Finding::what)
                .containsExactly(tuple(Fault.DIFFERENT, "it holds jigs/H1, by its title."));
    }

    @ParameterizedTest
    @CsvSource({"3.937x50x20, x", "100x49.99x20, y", "100x50x508, z", "1x2x3, x"})
    void anotherSizeIsFoundByItsFirstAxis(String size, String axis) {
        assertThat(Found.list(findings -> SolidCheck.of("H1", solid("H1 size=" + size, FACETS), findings)))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.fault()).isEqualTo(Fault.SCALED);
                    assertThat(finding.what()).contains(" mm along " + axis + ", not ");
                });
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3})
    void aFacetThatIsTurnedOverIsFound(int at) {
        assertThat(found(TITLE, Found.changed(FACETS, at, SolidCheckTest::turned)))
                .singleElement()
                .asString()
                .startsWith("MIRRORED facet ");
    }

    @Test
    void aFacetThatIsThereTwiceIsFound() {
        assertThat(found(TITLE, Found.with(FACETS, FACETS.get(1)))).containsExactly("MIRRORED facet 5");
    }

    @ParameterizedTest
    @CsvSource({"0, 1", "1, 1", "2, 1", "3, 1"})
    void aFacetThatIsGoneIsFoundByItsNeighbour(int at, int first) {
        List<String> found = found(TITLE, Found.without(FACETS, at));
        assertThat(found).containsExactly("MISSING facet " + first);
    }

    @Test
    void aSurfaceThatIsTurnedInwardsIsFound() {
        assertThat(found(TITLE, FACETS.stream().map(SolidCheckTest::turned).toList()))
                .containsExactly("MIRRORED");
    }

    @Test
    void aSolidWithoutFacetsIsFound() {
        assertThat(found(TITLE, new ArrayList<>())).containsExactly("MISSING");
    }
}
