package dev.calotte.check;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.check.RecordedDome.Panel;
import dev.calotte.check.RecordedDome.PanelKind;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PanelCheckTest {

    private static final RecordedDome DOME = Records.dome(CheckedDomes.ICOSAHEDRON);
    private static final Altered ALTERED = new Altered(DOME);

    /** Has panels of either hand. */
    private static final RecordedDome HANDED = Records.dome(CheckedDomes.CLASS_THREE);

    private static List<String> found(RecordedDome dome) {
        return Found.by(findings -> new PanelCheck(dome, findings).check());
    }

    private static int first(RecordedDome dome, String kind) {
        int at = 0;
        while (!dome.panels().get(at).kind().equals(kind)) {
            at++;
        }
        return at;
    }

    @Test
    void aPanelOfNoKindIsFound() {
        assertThat(found(ALTERED.panel(0, p -> new Panel(p.mark(), "P9", p.vertices(), p.row()))))
                .containsExactly(
                        "FOREIGN " + DOME.panels().get(0).mark(),
                        "DIFFERENT " + DOME.panels().get(0).kind());
    }

    @Test
    void aPanelOfAnotherKindIsFoundWithBothCounts() {
        int at = first(DOME, "P1");
        assertThat(found(ALTERED.panel(at, p -> new Panel(p.mark(), "P2", p.vertices(), p.row()))))
                .containsExactly("DIFFERENT " + DOME.panels().get(at).mark(), "DIFFERENT P1", "DIFFERENT P2");
    }

    @Test
    void aPanelThatRunsClockwiseIsFound() {
        UnaryOperator<Panel> turned = p -> new Panel(
                p.mark(),
                p.kind(),
                List.of(p.vertices().get(0), p.vertices().get(2), p.vertices().get(1)),
                p.row());
        assertThat(found(ALTERED.panel(4, turned)))
                .containsExactly("MIRRORED " + DOME.panels().get(4).mark());
    }

    /** Each panel of the left kind has the sides of the right one, in the other order. */
    @Test
    void aPanelOfTheOtherHandIsFound() {
        PanelKind left = HANDED.panelKinds().stream()
                .filter(kind -> kind.hand().equals("left"))
                .findFirst()
                .orElseThrow();
        int at = HANDED.panelKinds().indexOf(left);
        RecordedDome dome = new Altered(HANDED).panelKind(at, k -> kind(k, "right", k.count(), k.sides()));
        List<String> marks = HANDED.panels().stream()
                .filter(panel -> panel.kind().equals(left.mark()))
                .map(panel -> "MIRRORED " + panel.mark())
                .toList();
        assertThat(marks).isNotEmpty();
        assertThat(found(dome)).containsExactlyElementsOf(marks);
    }

    private static PanelKind kind(PanelKind k, String hand, int count, List<Double> sides) {
        return new PanelKind(k.mark(), hand, count, sides, k.angles(), k.altitudes(), k.narrowest(), k.area());
    }

    @Test
    void aKindWithOtherSidesIsFoundAtItsPanelsAndItsOwnFigures() {
        RecordedDome dome =
                ALTERED.panelKind(0, k -> kind(k, k.hand(), k.count(), Found.changed(k.sides(), 2, mm -> mm + 0.01)));
        List<String> expected = new ArrayList<>(DOME.panels().stream()
                .filter(panel -> panel.kind().equals("P1"))
                .map(panel -> "DIFFERENT " + panel.mark())
                .toList());
        List<String> found = found(dome);
        assertThat(found).containsAll(expected);
        // three angles, three altitudes, the narrowest width, the area
        expected.addAll(Collections.nCopies(8, "DIFFERENT P1"));
        assertThat(found).containsExactlyInAnyOrderElementsOf(expected);
    }

    @Test
    void sidesThatMakeNoTriangleAreFound() {
        RecordedDome dome = ALTERED.panelKind(1, k -> kind(k, k.hand(), k.count(), List.of(1.0, 2.0, 4.0)));
        assertThat(Found.list(findings -> new PanelCheck(dome, findings).check()))
                .filteredOn(finding -> finding.place().equals("P2"))
                .extracting(Finding::what)
                .containsExactly("its sides make no triangle.");
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2})
    void otherAnglesAndAltitudesAreFound(int side) {
        assertThat(found(ALTERED.panelKind(
                        0,
                        k -> new PanelKind(
                                k.mark(),
                                k.hand(),
                                k.count(),
                                k.sides(),
                                Found.changed(k.angles(), side, deg -> deg + 1e-4),
                                k.altitudes(),
                                k.narrowest(),
                                k.area()))))
                .containsExactly("DIFFERENT P1");
        assertThat(found(ALTERED.panelKind(
                        0,
                        k -> new PanelKind(
                                k.mark(),
                                k.hand(),
                                k.count(),
                                k.sides(),
                                k.angles(),
                                Found.changed(k.altitudes(), side, mm -> mm - 1e-4),
                                k.narrowest(),
                                k.area()))))
                .containsExactly("DIFFERENT P1");
    }

    @Test
    void countsWidthsAndAreasOfKindsAreFound() {
        assertThat(found(ALTERED.panelKind(0, k -> kind(k, k.hand(), k.count() - 1, k.sides()))))
                .containsExactly("DIFFERENT P1");
        assertThat(found(ALTERED.panelKind(
                        0,
                        k -> new PanelKind(
                                k.mark(),
                                k.hand(),
                                k.count(),
                                k.sides(),
                                k.angles(),
                                k.altitudes(),
                                k.narrowest() + 1,
                                k.area()))))
                .containsExactly("DIFFERENT P1");
        assertThat(found(ALTERED.panelKind(
                        0,
                        k -> new PanelKind(
                                k.mark(),
                                k.hand(),
                                k.count(),
                                k.sides(),
                                k.angles(),
                                k.altitudes(),
                                k.narrowest(),
                                k.area() * 1.001))))
                .containsExactly("DIFFERENT P1");
    }
}
