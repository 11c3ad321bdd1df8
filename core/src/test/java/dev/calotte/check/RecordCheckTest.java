package dev.calotte.check;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.check.RecordedDome.Figures;
import dev.calotte.check.RecordedDome.Hub;
import dev.calotte.check.RecordedDome.Panel;
import dev.calotte.check.RecordedDome.Strut;
import dev.calotte.parts.Parts;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Right records and what is wrong with the whole of one; faults of struts, panels, hubs and marks have their own tests. */
class RecordCheckTest {

    private static final RecordedDome DOME = Records.dome(CheckedDomes.ICOSAHEDRON);
    private static final RecordedDome SPHERE = Records.dome(CheckedDomes.OCTAHEDRON);
    private static final Altered ALTERED = new Altered(DOME);

    private static List<String> found(RecordedDome dome) {
        return Found.by(findings -> RecordCheck.of(dome, findings));
    }

    @ParameterizedTest
    @MethodSource("dev.calotte.check.CheckedDomes#all")
    void nothingIsFoundInARightRecord(Parts parts) {
        RecordedDome dome = Records.dome(parts);
        Findings findings = new Findings("dome.json", "");
        Mismatch mismatch = RecordCheck.of(dome, findings);
        assertThat(findings.list()).isEmpty();
        assertThat(mismatch.mm()).isLessThanOrEqualTo(2 * parts.mergeErrorMm() + 1e-8);
        assertThat(mismatch.where()).matches("(strut S|panel P).*");
    }

    @Test
    void theLargestMismatchIsThatOfAMergedKind() {
        Mismatch mismatch = RecordCheck.of(Records.dome(CheckedDomes.MERGED), new Findings("dome.json", ""));
        // 0.29453 and 0.29524 of 3000 mm, textbook chords of a 4V, are 2.1 mm apart; each is half of that from its kind
        assertThat(mismatch.mm()).isBetween(1.05, 1.1);
    }

    static Stream<List<Integer>> noVertices() {
        return Stream.of(List.of(0, 1), List.of(0, 1, -1), List.of(0, 1, 1), List.of(0, 1, 61), List.of(0, 1, 2, 3));
    }

    @ParameterizedTest
    @MethodSource("noVertices")
    void aPanelWithoutThreeVerticesOfTheDomeEndsTheCheck(List<Integer> vertices) {
        assertThat(DOME.vertices()).hasSize(61);
        RecordedDome dome = ALTERED.panel(3, p -> new Panel(p.mark(), p.kind(), vertices, p.row()));
        Findings findings = new Findings("dome.json", "Make it again.");
        assertThat(RecordCheck.of(dome, findings)).isEqualTo(Mismatch.NONE);
        assertThat(findings.list())
                .containsExactly(new Finding(
                        Fault.DIFFERENT,
                        "dome.json",
                        DOME.panels().get(3).mark(),
                        "it names the vertices " + vertices + ", which are not 3 of the dome.",
                        "Make it again."));
    }

    @Test
    void aStrutOrAHubWithoutItsVerticesEndsTheCheck() {
        assertThat(found(ALTERED.strut(0, s -> new Strut(s.mark(), s.kind(), s.to(), s.to(), s.dihedral()))))
                .containsExactly("DIFFERENT " + DOME.struts().get(0).mark());
        assertThat(found(ALTERED.hub(0, h -> new Hub(h.mark(), h.kind(), -1, h.row()))))
                .containsExactly("DIFFERENT " + DOME.hubs().get(0).mark());
    }

    /** Three hubs on one line, two in one place, and one in the centre of the sphere. */
    @Test
    void hubsThatSpanNoPanelEndTheCheck() {
        List<Integer> v = DOME.panels().get(3).vertices();
        Vector3D from = DOME.vertex(v.get(0));
        Vector3D to = DOME.vertex(v.get(1));
        for (Vector3D third : List.of(from, from.add(2, to.subtract(from)))) {
            Findings findings = new Findings("dome.json", "");
            RecordedDome dome = ALTERED.vertices(Found.changed(DOME.vertices(), v.get(2), at -> third));
            assertThat(RecordCheck.of(dome, findings)).isEqualTo(Mismatch.NONE);
            assertThat(findings.list())
                    .extracting(Finding::place)
                    .contains(DOME.panels().get(3).mark());
        }
        assertThat(found(ALTERED.vertices(Found.changed(DOME.vertices(), 0, at -> Vector3D.ZERO))))
                .containsExactly("DIFFERENT " + DOME.hubs().get(0).mark());
    }

    /** Two ends of struts and corners of panels are off too, but the first thing found is the vertex itself. */
    @ParameterizedTest
    @ValueSource(doubles = {1e-6, 1, -500})
    void aVertexOffTheSphereIsFound(double mm) {
        Vector3D vertex = DOME.vertex(7);
        RecordedDome dome = ALTERED.vertices(Found.changed(DOME.vertices(), 7, v -> v.add(mm, vertex.normalize())));
        assertThat(found(dome)).contains("DIFFERENT vertex 7").doesNotContain("DIFFERENT vertex 8");
    }

    @Test
    void anotherHeightOrAreaIsFound() {
        Figures right = DOME.figures();
        assertThat(found(ALTERED.figures(new Figures(right.radius(), right.height() + 1e-3, right.surfaceArea()))))
                .containsExactly("DIFFERENT dome.height");
        assertThat(found(ALTERED.figures(new Figures(right.radius(), right.height(), right.surfaceArea() - 1e-3))))
                .containsExactly("DIFFERENT dome.surfaceArea");
    }

    @Test
    void anotherRadiusIsFoundAtEveryVertex() {
        Figures right = DOME.figures();
        List<String> found =
                found(ALTERED.figures(new Figures(right.radius() + 1, right.height(), right.surfaceArea())));
        for (int i = 0; i < DOME.vertices().size(); i++) {
            assertThat(found).contains("DIFFERENT vertex " + i);
        }
    }

    /** A panel in the middle of the dome: a hole in the surface, and angles without two panels round it. */
    @Test
    void aPanelThatIsGoneLeavesAHole() {
        Panel gone = DOME.panels().get(0);
        List<String> found = found(ALTERED.panels(Found.without(DOME.panels(), 0)));
        assertThat(found)
                .contains("MISSING panels", "DIFFERENT dome.surfaceArea", "DIFFERENT " + gone.kind())
                .filteredOn(each -> each.startsWith("DIFFERENT S"))
                .hasSize(3);
        assertThat(
                        Found.list(findings ->
                                        RecordCheck.of(ALTERED.panels(Found.without(DOME.panels(), 0)), findings))
                                .stream()
                                .map(Finding::what))
                .contains("there is a hole in the surface, and no opening.");
    }

    /** Of a whole sphere the border round one panel is the only one, and no hole: it could be the dome's base. */
    @Test
    void aPanelThatIsGoneFromASphereIsFoundByItsCount() {
        assertThat(found(new Altered(SPHERE).panels(Found.without(SPHERE.panels(), 0))))
                .contains("DIFFERENT " + SPHERE.panels().get(0).kind())
                .doesNotContain("MISSING panels");
    }

    /** One vertex less than before, so Euler's formula holds no longer. */
    @Test
    void twoPanelsThatMeetInAVertexOnlyAreNoSurface() {
        List<Panel> panels = SPHERE.panels();
        Panel one = panels.get(0);
        List<Panel> kept = panels.stream()
                .filter(panel -> panel.equals(one)
                        || panel.vertices().stream()
                                        .filter(one.vertices()::contains)
                                        .count()
                                == 1)
                .limit(2)
                .toList();
        assertThat(kept).hasSize(2);
        assertThat(Found.list(findings -> RecordCheck.of(new Altered(SPHERE).panels(kept), findings)).stream()
                        .filter(finding -> finding.fault() == Fault.MISSING
                                && finding.place().equals("panels"))
                        .map(Finding::what))
                .contains("vertices less edges plus panels are 1, the panels do not make one surface.");
    }

    @Test
    void aPanelThatLiesOnAnotherIsFound() {
        Panel first = DOME.panels().get(0);
        Panel again = new Panel("P1-9.01", first.kind(), first.vertices(), first.row());
        List<Integer> v = first.vertices().stream().sorted().toList();
        assertThat(found(ALTERED.panels(Found.with(DOME.panels(), again))))
                .contains(
                        "DOUBLED P1-9.01",
                        "DOUBLED vertices " + v.get(0) + " and " + v.get(1),
                        "DOUBLED vertices " + v.get(0) + " and " + v.get(2),
                        "DOUBLED vertices " + v.get(1) + " and " + v.get(2));
    }

    @Test
    void openingsMayLeaveHoles() {
        RecordedDome dome = Records.dome(CheckedDomes.OPENED);
        assertThat(dome.opened()).isTrue();
        List<Integer> inside = dome.panels().get(0).vertices();
        assertThat(found(new Altered(dome).panels(Found.without(dome.panels(), 0))))
                .as("without the panel " + inside)
                .isNotEmpty()
                .doesNotContain("MISSING panels");
    }
}
