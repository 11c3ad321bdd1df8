package dev.calotte.check;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.check.RecordedDome.Strut;
import dev.calotte.check.RecordedDome.StrutKind;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StrutCheckTest {

    private static final RecordedDome DOME = Records.dome(CheckedDomes.ICOSAHEDRON);
    private static final Altered ALTERED = new Altered(DOME);

    private static List<String> found(RecordedDome dome) {
        return Found.by(findings -> new StrutCheck(dome, new Edges(dome.panels()), findings).check());
    }

    private static RecordedDome withLength(RecordedDome dome, int kind, double length) {
        return new Altered(dome)
                .strutKind(
                        kind,
                        k -> new StrutKind(
                                k.mark(),
                                length,
                                k.cutLength() + length - k.length(),
                                length / dome.figures().radius(),
                                k.count(),
                                k.gaps(),
                                k.axialAngle(),
                                k.mergeError(),
                                k.flattened()));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-6, 0.1, -30})
    void aKindOfAnotherLengthIsFoundAtEachOfItsStruts(double by) {
        RecordedDome dome = withLength(DOME, 1, DOME.strutKinds().get(1).length() + by);
        assertThat(found(dome))
                .containsExactlyElementsOf(DOME.struts().stream()
                        .filter(strut -> strut.kind().equals("S2"))
                        .map(strut -> "DIFFERENT " + strut.mark())
                        .toList());
    }

    @Test
    void aMergedKindMayDifferByItsErrorAndNoMore() {
        RecordedDome dome = Records.dome(CheckedDomes.MERGED);
        int merged = 1;
        double error = dome.strutKinds().get(merged).mergeError();
        assertThat(error).isGreaterThan(1);
        assertThat(found(withLength(dome, merged, dome.strutKinds().get(merged).length() + 0.01)))
                .isNotEmpty()
                .allSatisfy(each -> assertThat(each).startsWith("DIFFERENT S2-"));
    }

    @Test
    void aStrutOfAnotherKindIsFoundWithBothCounts() {
        Strut first = DOME.struts().get(0);
        String other = first.kind().equals("S1") ? "S3" : "S1";
        assertThat(found(ALTERED.strut(0, s -> new Strut(s.mark(), other, s.from(), s.to(), s.dihedral()))))
                .containsExactlyInAnyOrder(
                        "DIFFERENT " + first.mark(), "DIFFERENT " + first.kind(), "DIFFERENT " + other);
    }

    @Test
    void aStrutOfNoKindIsFound() {
        Strut first = DOME.struts().get(0);
        assertThat(found(ALTERED.strut(0, s -> new Strut(s.mark(), "S9", s.from(), s.to(), s.dihedral()))))
                .containsExactly("FOREIGN " + first.mark(), "DIFFERENT " + first.kind());
    }

    @Test
    void aStrutThatIsGoneIsFoundByTheSidesOfPanels() {
        Strut gone = DOME.struts().get(10);
        int least = Math.min(gone.from(), gone.to());
        int most = Math.max(gone.from(), gone.to());
        assertThat(found(ALTERED.struts(Found.without(DOME.struts(), 10))))
                .containsExactly("DIFFERENT " + gone.kind(), "MISSING vertices " + least + " and " + most);
    }

    @Test
    void aStrutThatIsThereTwiceIsFoundWhicheverWayItRuns() {
        Strut first = DOME.struts().get(0);
        Strut again = new Strut("S1-9.01", first.kind(), first.to(), first.from(), first.dihedral());
        assertThat(found(ALTERED.struts(Found.with(DOME.struts(), again))))
                .containsExactly("DOUBLED S1-9.01", "DIFFERENT " + first.kind());
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-5, -0.5, 180})
    void anotherAngleBetweenPanelsIsFound(double by) {
        assertThat(found(ALTERED.strut(0, s -> new Strut(s.mark(), s.kind(), s.from(), s.to(), s.dihedral() + by))))
                .containsExactly("DIFFERENT " + DOME.struts().get(0).mark());
    }

    @Test
    void anAngleIsGivenWhereTwoPanelsMeetAndNowhereElse() {
        int base = 0;
        while (Double.isFinite(DOME.struts().get(base).dihedral())) {
            base++;
        }
        RecordedDome none = ALTERED.strut(0, s -> new Strut(s.mark(), s.kind(), s.from(), s.to(), Double.NaN));
        RecordedDome some = ALTERED.strut(base, s -> new Strut(s.mark(), s.kind(), s.from(), s.to(), 160));
        assertThat(found(none))
                .containsExactly("DIFFERENT " + DOME.struts().get(0).mark());
        assertThat(found(some))
                .containsExactly("DIFFERENT " + DOME.struts().get(base).mark());
    }

    private static StrutKind kind(StrutKind k, double factor, double cut, int count, boolean flattened) {
        return new StrutKind(
                k.mark(), k.length(), cut, factor, count, k.gaps(), k.axialAngle(), k.mergeError(), flattened);
    }

    @Test
    void countsFactorsAndCutLengthsOfKindsAreFound() {
        assertThat(found(ALTERED.strutKind(0, k -> kind(k, k.chordFactor(), k.cutLength(), k.count() + 1, false))))
                .containsExactly("DIFFERENT S1");
        assertThat(found(ALTERED.strutKind(1, k -> kind(k, k.chordFactor() + 1e-6, k.cutLength(), k.count(), false))))
                .containsExactly("DIFFERENT S2");
        assertThat(found(ALTERED.strutKind(2, k -> kind(k, k.chordFactor(), k.cutLength() + 1, k.count(), false))))
                .containsExactly("DIFFERENT S3");
    }

    /** Of a tube that is flattened and bent the cut is longer than from bend to bend. */
    @Test
    void cutLengthsOfFlattenedTubesAreNotCompared() {
        assertThat(found(ALTERED.strutKind(2, k -> kind(k, k.chordFactor(), k.cutLength() + 1, k.count(), true))))
                .isEmpty();
    }
}
