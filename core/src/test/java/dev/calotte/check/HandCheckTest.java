package dev.calotte.check;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.check.RecordedDome.HubKind;
import dev.calotte.export.Facets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Rims alone: a triangle for each strut that falls as it does. */
class HandCheckTest {

    private static final HubKind HANDED = kind(List.of("S1", "S2", "S3"), List.of(100.0, 120.0, 140.0));
    private static final HubKind EVEN = kind(List.of("S1", "S2", "S2"), List.of(110.0, 140.0, 110.0));

    private static HubKind kind(List<String> struts, List<Double> gaps) {
        return new HubKind("H7", "left", 1, struts, gaps, List.of(11.0, 12.0, 12.0), false);
    }

    /** Of a kind, turned so far; the other way round for a mirror; rising outwards for an outer half. */
    private static Facets rims(HubKind kind, double turnDeg, int way, boolean rising) {
        float[] xyz = new float[9 * kind.struts().size()];
        double bearing = turnDeg;
        for (int i = 0; i < kind.struts().size(); i++) {
            double rad = Math.toRadians(bearing);
            double x = StrictMath.cos(rad);
            double y = StrictMath.sin(rad);
            double fall = StrictMath.tan(Math.toRadians(kind.axialAngles().get(i))) * (rising ? -1 : 1);
            double[] corners = {0, 0, 9, 10 * x, 10 * y, 9 - 10 * fall, -5 * y, 5 * x, 9};
            for (int k = 0; k < 9; k++) {
                xyz[9 * i + k] = (float) corners[k];
            }
            bearing += way * kind.gaps().get(i);
        }
        return new Facets("", xyz);
    }

    private static List<String> found(HubKind kind, boolean outer, Facets facets) {
        return Found.by(findings -> HandCheck.of(kind, outer, facets, findings));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 23, 181, 300, 359.99})
    void aMirroredJigIsFoundHoweverItLies(double turnDeg) {
        assertThat(found(HANDED, false, rims(HANDED, turnDeg, 1, false))).isEmpty();
        assertThat(found(HANDED, false, rims(HANDED, turnDeg, -1, false))).containsExactly("MIRRORED H7");
    }

    @Test
    void anOuterHalfIsSeenFromInside() {
        assertThat(found(HANDED, true, rims(HANDED, 40, -1, true))).isEmpty();
        assertThat(found(HANDED, true, rims(HANDED, 40, 1, true))).containsExactly("MIRRORED H7");
    }

    @Test
    void aKindThatIsItsOwnMirrorImageMayBeEither() {
        assertThat(found(EVEN, false, rims(EVEN, 10, 1, false))).isEmpty();
        assertThat(found(EVEN, false, rims(EVEN, 10, -1, false))).isEmpty();
    }

    /** Another hub is not called mirrored, nor is one of which the record cannot be true. */
    @Test
    void nothingIsSaidOfWhatIsNoMirrorImage() {
        assertThat(found(HANDED, false, rims(EVEN, 0, 1, false))).isEmpty();
        assertThat(found(HANDED, false, new Facets("", new float[9]))).isEmpty();
        HubKind none = new HubKind("H1", "none", 1, List.of("S1"), List.of(), List.of(), true);
        HubKind flat = new HubKind("H1", "none", 1, List.of("S1"), List.of(), List.of(0.0), true);
        assertThat(found(none, false, rims(HANDED, 0, -1, false))).isEmpty();
        assertThat(found(flat, false, rims(HANDED, 0, -1, false))).isEmpty();
    }
}
