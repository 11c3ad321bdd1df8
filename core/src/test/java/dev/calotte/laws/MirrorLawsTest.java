package dev.calotte.laws;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.parts.Hand;
import dev.calotte.parts.HubKind;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.PanelKind;
import dev.calotte.parts.Parts;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MirrorLawsTest {

    private static Parts parts(DomeSpec spec) {
        return Parts.of(Dome.of(spec), Joinery.nodeToNode());
    }

    @ParameterizedTest
    @CsvSource({"TETRAHEDRON, 2, 1", "OCTAHEDRON, 3, 1", "ICOSAHEDRON, 2, 1", "ICOSAHEDRON, 3, 2", "ICOSAHEDRON, 4, 1"})
    void turnedBreakdownsAreMirrorImages(Solid solid, int b, int c) {
        Parts one = parts(Samples.spec(solid, new Breakdown(b, c)));
        Parts other = parts(Samples.spec(solid, new Breakdown(c, b)));
        assertThat(one.strutKinds())
                .usingRecursiveComparison()
                .withComparatorForType(
                        (x, y) -> Math.abs(x - y) <= 1e-9 * Samples.R ? 0 : Double.compare(x, y), Double.class)
                .isEqualTo(other.strutKinds());
        assertThat(panels(one, false)).isEqualTo(panels(other, true)).isNotEqualTo(panels(other, false));
        assertThat(hubs(one, false)).isEqualTo(hubs(other, true)).isNotEqualTo(hubs(other, false));
    }

    private static Map<String, Integer> panels(Parts parts, boolean mirrored) {
        Map<String, Integer> counts = new TreeMap<>();
        for (PanelKind kind : parts.panelKinds()) {
            counts.put(kind.number() + " " + name(kind.hand(), mirrored) + kind.struts(), kind.count());
        }
        return counts;
    }

    private static Map<String, Integer> hubs(Parts parts, boolean mirrored) {
        Map<String, Integer> counts = new TreeMap<>();
        for (HubKind kind : parts.hubKinds()) {
            counts.put(
                    kind.number() + " " + name(kind.hand(), mirrored)
                            + kind.struts().size(),
                    kind.count());
        }
        return counts;
    }

    private static Hand name(Hand hand, boolean mirrored) {
        return mirrored ? hand.mirror() : hand;
    }
}
