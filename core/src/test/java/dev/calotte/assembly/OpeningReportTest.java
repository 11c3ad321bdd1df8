package dev.calotte.assembly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.assembly.OpeningReport.End;
import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Opening;
import dev.calotte.dome.Panel;
import dev.calotte.dome.Size;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OpeningReportTest {

    private static Dome dome(int n, int kept, int of) {
        return Dome.of(DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(n), Size.radius(3000))
                .withKeep(new Keep.Rows(kept, of)));
    }

    private static List<OpeningReport> reports(Dome dome) {
        return OpeningReport.of(Parts.of(dome, Joinery.nodeToNode()));
    }

    private static OpeningReport report(Dome whole, boolean removesStruts, List<Integer> panels) {
        return reports(whole.withOpenings(List.of(new Opening("door", panels, removesStruts))))
                .get(0);
    }

    /** The panels of a hub. */
    private static List<Integer> at(Dome dome, int hub) {
        return dome.panels().stream()
                .filter(p -> p.hubs().contains(hub))
                .map(Panel::index)
                .toList();
    }

    /** B - 3 for B base hubs: counted by the project's own arithmetic for 1V to 6V. */
    @ParameterizedTest
    @CsvSource({"2, 1, 2, 10, 7", "3, 5, 9, 15, 12", "4, 1, 2, 20, 17", "6, 1, 2, 30, 27"})
    void aWholeCapHasThreeFewerRedundantMembersThanBaseHubs(int n, int kept, int of, int baseHubs, int redundant) {
        Dome whole = dome(n, kept, of);
        assertThat(whole.baseRing()).hasSize(baseHubs);
        OpeningReport report = report(whole, false, List.of(0));
        assertThat(report.redundantBefore()).isEqualTo(redundant);
        assertThat(report.redundantAfter()).isEqualTo(redundant);
    }

    /** Each strut counts one and each hub three: a hub of six with its struts takes three, the crown of five two. */
    @Test
    void strutsCountOneAndHubsThree() {
        Dome whole = dome(3, 5, 9);
        assertThat(report(whole, true, at(whole, 0)).redundantAfter()).isEqualTo(12 - 5 + 3);
        int six = whole.hubs().stream()
                .filter(h -> !h.open() && whole.around(h.index()).size() == 6)
                .findFirst()
                .orElseThrow()
                .index();
        OpeningReport report = report(whole, true, at(whole, six));
        assertThat(report.removedHubs()).hasSize(1);
        assertThat(report.removedStruts()).hasSize(6);
        assertThat(report.redundantAfter()).isEqualTo(12 - 6 + 3);
    }

    /** A base strut joins two fixed hubs and holds nothing. */
    @Test
    void aBaseStrutDoesNotCount() {
        Dome whole = dome(2, 1, 2);
        Panel standing = whole.panels().stream()
                .filter(p -> p.hubs().stream()
                                .filter(h -> whole.hubs().get(h).open())
                                .count()
                        == 2)
                .findFirst()
                .orElseThrow();
        OpeningReport report = report(whole, true, List.of(standing.index()));
        assertThat(report.removedStruts()).hasSize(1);
        assertThat(report.removedHubs()).isEmpty();
        assertThat(report.freeEdges()).hasSize(2);
        assertThat(report.bareStruts()).isEmpty();
        assertThat(report.rimHubs()).hasSize(3);
        assertThat(report.redundantAfter()).isEqualTo(7);
        OpeningReport kept = report(whole, false, List.of(standing.index()));
        assertThat(kept.removedStruts()).isEmpty();
        assertThat(kept.bareStruts()).isEqualTo(report.removedStruts());
    }

    /** The crown of a 2V: five panels, a hub of five struts, and a rim of five hubs with six struts each. */
    @Test
    void theCrownIsTakenAndItsRimListed() {
        Dome whole = dome(2, 1, 2);
        OpeningReport gone = report(whole, true, at(whole, 0));
        assertThat(gone.name()).isEqualTo("door");
        assertThat(gone.removedPanels()).hasSize(5).allMatch(mark -> mark.matches("P1-1\\.0[1-5]"));
        assertThat(gone.removedStruts()).hasSize(5).allMatch(mark -> mark.matches("S1-1\\.[01][0-9]"));
        assertThat(gone.removedHubs()).singleElement().asString().endsWith("-0.01");
        assertThat(gone.freeEdges()).hasSize(5).allMatch(mark -> mark.startsWith("S2-1."));
        assertThat(gone.bareStruts()).isEmpty();
        assertThat(gone.rimHubs()).hasSize(5).allMatch(mark -> mark.matches("H[0-9]+-1\\.0[1-5]"));
        assertThat(gone.ends()).hasSize(5 * 5).extracting(End::hub).containsSubsequence(gone.rimHubs());
        OpeningReport kept = report(whole, false, at(whole, 0));
        assertThat(kept.removedHubs()).isEmpty();
        assertThat(kept.bareStruts()).hasSize(5).isEqualTo(gone.removedStruts());
        assertThat(kept.freeEdges()).isEqualTo(gone.freeEdges());
        assertThat(kept.rimHubs()).hasSize(6);
        assertThat(kept.ends()).hasSize(5 * 6 + 5);
        End first = kept.ends().get(0);
        assertThat(first.strut()).startsWith("S1-1.");
        assertThat(first.lengthMm() / 3000).isCloseTo(0.5465, within(5e-5)); // 2 sin(atan(2) / 4), closed form
    }

    @Test
    void openingsAreCountedOneAfterTheOther() {
        Dome whole = dome(3, 5, 9);
        List<OpeningReport> reports = reports(whole.withOpenings(
                List.of(new Opening("vent", at(whole, 0), true), new Opening("window", List.of(60), false))));
        assertThat(reports).extracting(OpeningReport::name).containsExactly("vent", "window");
        assertThat(reports).extracting(OpeningReport::redundantBefore).containsExactly(12, 10);
        assertThat(reports).extracting(OpeningReport::redundantAfter).containsExactly(10, 10);
        assertThat(reports.get(1).removedPanels()).hasSize(1);
        assertThat(reports.get(1).removedStruts()).isEmpty();
    }

    /** A strut between two openings goes with the second. */
    @Test
    void whatTwoOpeningsShareGoesWithTheLast() {
        Dome whole = dome(2, 1, 2);
        List<OpeningReport> reports = reports(whole.withOpenings(
                List.of(new Opening("one", List.of(0), true), new Opening("two", List.of(1), true))));
        assertThat(reports.get(0).removedStruts()).isEmpty();
        assertThat(reports.get(1).removedStruts()).hasSize(1);
    }

    @Test
    void missingMembersAreSaidInWords() {
        assertThat(report(dome(3, 5, 9), false, List.of(0)).redundancy())
                .isEqualTo("Redundant members, counted for pin joints on a fixed base: 12 before the opening, 12 after"
                        + " it. This says nothing about strength.");
        assertThat(withAfter(-1).redundancy())
                .contains("7 before the opening, after it 1 member more is needed before the frame is a mechanism no");
        assertThat(withAfter(-4).redundancy()).contains("after it 4 members more are needed");
        assertThat(withAfter(0).redundancy()).contains("0 after it");
    }

    private static OpeningReport withAfter(int after) {
        List<String> none = List.of();
        return new OpeningReport("x", none, none, none, none, none, none, List.of(), 7, after);
    }

    /** A closed frame of triangles is just stiff when it floats free: 3 V - 6 struts for V hubs. */
    @Test
    void aWholeSphereFloatsFree() {
        Dome sphere = Dome.of(DomeSpec.of(Solid.OCTAHEDRON, Breakdown.of(2), Size.radius(1000)));
        OpeningReport report = report(sphere, true, List.of(0, 1));
        assertThat(report.redundantBefore()).isZero();
        assertThat(report.redundantAfter()).isEqualTo(-1);
    }

    @Test
    void aDomeWithoutOpeningsHasNothingToReport() {
        assertThat(reports(dome(2, 1, 2))).isEmpty();
    }
}
