package dev.calotte.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Opening;
import dev.calotte.dome.Panel;
import dev.calotte.dome.Size;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The kinds of a dome with openings. */
class OpenedPartsTest {

    private static Dome dome(int n, int kept, int of) {
        return Dome.of(DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(n), Size.radius(3000))
                .withKeep(new Keep.Rows(kept, of)));
    }

    private static Parts opened(Dome whole, boolean removesStruts, List<Integer> panels) {
        return Parts.of(whole.withOpenings(List.of(new Opening("vent", panels, removesStruts))), Joinery.gap(20));
    }

    private static List<Integer> panels(Dome dome, int row) {
        return dome.panels().stream()
                .filter(p -> p.row() == row)
                .map(Panel::index)
                .toList();
    }

    /** The shortest struts and the smallest panels of a 3V meet at its crown: well known, and in the kinds of the whole. */
    @Test
    void numbersDoNotShiftWhenAKindIsGone() {
        Dome whole = dome(3, 1, 9);
        Dome two = dome(3, 2, 9);
        assertThat(Parts.of(whole, Joinery.gap(20)).strutKinds()).hasSize(2);
        Parts parts = opened(two, true, panels(two, 1));
        assertThat(parts.strutKinds()).extracting(StrutKind::mark).containsExactly("S2", "S3");
        assertThat(parts.panelKinds()).extracting(PanelKind::mark).containsExactly("P2");
        assertThat(parts.whole().strutKinds()).extracting(StrutKind::mark).containsExactly("S1", "S2", "S3");
        assertThat(parts.joinery()).isEqualTo(Joinery.gap(20));
        assertThat(parts.strutKinds().get(0).cutLengthMm())
                .isEqualTo(parts.whole().strutKinds().get(1).cutLengthMm());
    }

    @Test
    void aTwinThatIsGoneIsNamedNoMore() {
        Dome whole = dome(4, 1, 2);
        Parts before = Parts.of(whole, Joinery.gap(20));
        List<Integer> rights = whole.panels().stream()
                .filter(p -> before.kindOf(p).mark().equals("P3R"))
                .map(Panel::index)
                .toList();
        assertThat(rights).hasSize(30);
        List<PanelKind> kinds = opened(whole, false, rights).panelKinds();
        assertThat(kinds).extracting(PanelKind::mark).contains("P3L").doesNotContain("P3R");
        assertThat(kinds.stream()
                        .filter(k -> k.mark().equals("P3L"))
                        .findFirst()
                        .orElseThrow()
                        .twin())
                .isEqualTo(Optional.empty());
        List<PanelKind> some = opened(whole, false, rights.subList(1, 30)).panelKinds();
        assertThat(some.stream()
                        .filter(k -> k.mark().equals("P3L"))
                        .findFirst()
                        .orElseThrow()
                        .twin())
                .contains("P3R");
        assertThat(some.stream()
                        .filter(k -> k.mark().equals("P3R"))
                        .findFirst()
                        .orElseThrow()
                        .count())
                .isEqualTo(1);
    }

    /** A crown without panels has five gaps of 72 degrees; it is a kind of its own, numbered after all others. */
    @Test
    void hubsAtAnOpeningAreKindsOfTheirOwn() {
        Dome whole = dome(3, 5, 9);
        Parts parts = opened(whole, false, panels(whole, 1));
        int last = parts.whole().hubKinds().stream()
                .mapToInt(HubKind::number)
                .max()
                .orElseThrow();
        HubKind crown = parts.kindOf(parts.dome().hubs().get(0));
        assertThat(crown.number()).isGreaterThan(last);
        assertThat(crown.count()).isEqualTo(1);
        assertThat(crown.open()).isFalse();
        assertThat(crown.hand()).isEqualTo(Hand.NONE);
        assertThat(crown.struts()).containsExactly(1, 1, 1, 1, 1);
        assertThat(crown.gapsRad())
                .hasSize(5)
                .allSatisfy(gap -> assertThat(gap).isCloseTo(Math.toRadians(72), within(1e-12)));
        HubKind rim = parts.kindOf(parts.dome().hubs().get(1));
        assertThat(rim.number()).isGreaterThan(last).isNotEqualTo(crown.number());
        assertThat(rim.count()).isEqualTo(5);
        assertThat(parts.hubKinds().stream().mapToInt(HubKind::number).max().orElseThrow())
                .isEqualTo(last + 2);
    }

    /** So that whoever knew the whole dome finds its hubs where they were. */
    @Test
    void hubKindsStandInTheOrderOfTheirNumbersWhereverTheOpeningIs() {
        Dome whole = dome(3, 5, 9);
        for (int panel = 0; panel < whole.panels().size(); panel += 7) {
            for (boolean removesStruts : new boolean[] {false, true}) {
                List<HubKind> kinds =
                        opened(whole, removesStruts, List.of(panel)).hubKinds();
                assertThat(kinds).extracting(HubKind::number).isSorted();
            }
        }
    }

    /** An octahedron's struts are all equal; where one of four went, the two beside it stand 180 degrees apart. */
    @Test
    void hubsWithTheSameStrutsDifferByTheirGaps() {
        Dome sphere = Dome.of(DomeSpec.of(Solid.OCTAHEDRON, Breakdown.of(1), Size.radius(1000)));
        assertThat(sphere.panels()).hasSize(8);
        Parts parts = opened(sphere, true, List.of(0, 1, 5));
        assertThat(parts.dome().struts()).hasSize(10);
        assertThat(parts.hubKinds()).anySatisfy(kind -> {
            assertThat(kind.struts()).containsExactly(1, 1, 1);
            assertThat(kind.gapsRad()).anySatisfy(gap -> assertThat(gap).isCloseTo(Math.PI, within(1e-12)));
        });
        assertThat(parts.hubKinds().stream().mapToInt(HubKind::count).sum()).isEqualTo(6);
    }

    /** A hub that an opening made like another of the whole dome bears that one's number. */
    @Test
    void aHubThatTheWholeDomeHasTooKeepsThatNumber() {
        Dome whole = dome(2, 1, 2);
        Parts parts = opened(whole, true, panels(whole, 1));
        assertThat(parts.hubKinds()).extracting(HubKind::mark).doesNotHaveDuplicates();
        assertThat(parts.hubKinds().stream().map(k -> List.of(k.struts(), k.gapsRad(), k.open())))
                .doesNotHaveDuplicates();
    }
}
