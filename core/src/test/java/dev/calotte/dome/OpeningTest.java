package dev.calotte.dome;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem;
import dev.calotte.problem.Problem.Code;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Half a 2V icosahedron: 40 panels, 65 struts, 26 hubs, ten of them on the base; its last row has twenty panels. */
class OpeningTest {

    private static final double R = 3000;
    private static final Dome DOME = Dome.of(
            DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(2), Size.radius(R)).withKeep(new Keep.Rows(1, 2)));

    /** A panel of the last row that stands with a side on the base. */
    private static final Panel DOOR = DOME.panels().stream()
            .filter(p ->
                    p.hubs().stream().filter(h -> DOME.hubs().get(h).open()).count() == 2)
            .findFirst()
            .orElseThrow();

    private static Opening opening(boolean removesStruts, Panel... panels) {
        return new Opening(
                "door",
                IntStream.range(0, panels.length)
                        .mapToObj(i -> panels[i].index())
                        .toList(),
                removesStruts);
    }

    private static List<Panel> panelsAt(int hub) {
        return DOME.panels().stream().filter(p -> p.hubs().contains(hub)).toList();
    }

    /** A hub that is neither on the base nor next to it: the crown. */
    private static Opening crown(boolean removesStruts) {
        return new Opening("vent", panelsAt(0).stream().map(Panel::index).toList(), removesStruts);
    }

    @Test
    void onePanelGoesAndItsStrutsStay() {
        Dome opened = DOME.withOpenings(List.of(opening(false, DOOR)));
        assertThat(opened.panels()).hasSize(39);
        assertThat(opened.struts()).hasSize(65);
        assertThat(opened.hubs()).hasSize(26);
        assertThat(opened.baseRing()).isEqualTo(DOME.baseRing());
        assertThat(opened.struts().stream().filter(s -> s.dihedralRad().isEmpty()))
                .hasSize(10 + 2);
    }

    @Test
    void theBaseStrutGoesWithItsOnlyPanel() {
        Dome opened = DOME.withOpenings(List.of(opening(true, DOOR)));
        assertThat(opened.panels()).hasSize(39);
        assertThat(opened.struts()).hasSize(64);
        assertThat(opened.hubs()).hasSize(26);
        assertThat(opened.baseRing()).isEqualTo(DOME.baseRing());
    }

    @Test
    void theHubInTheMiddleGoesWithItsStruts() {
        Dome opened = DOME.withOpenings(List.of(crown(true)));
        assertThat(opened.panels()).hasSize(35);
        assertThat(opened.struts()).hasSize(60);
        assertThat(opened.hubs()).hasSize(25).allMatch(hub -> hub.row() > 0);
        assertThat(opened.wholeHub(0)).isEqualTo(1);
        assertThat(opened.baseRing())
                .isEqualTo(DOME.baseRing().stream().map(h -> h - 1).toList());
    }

    /** Five gaps of 72 degrees: the crown of an icosahedron. */
    @Test
    void theHubInTheMiddleStaysWithItsStruts() {
        Dome opened = DOME.withOpenings(List.of(crown(false)));
        assertThat(opened.hubs()).hasSize(26);
        assertThat(opened.around(0)).hasSize(5).allSatisfy(spoke -> {
            assertThat(spoke.panel()).isEqualTo(Spoke.NONE);
            assertThat(spoke.opposite()).isEqualTo(Spoke.NONE);
            assertThat(spoke.gapRad().orElseThrow()).isCloseTo(Math.toRadians(72), within(1e-12));
        });
    }

    /** A strut between an opening that keeps its struts and one that does not has no panel, and stays. */
    @Test
    void aStrutThatAnOpeningKeepsStays() {
        Panel first = DOME.panels().get(0);
        Panel second = DOME.panels().get(1);
        List<Opening> both = List.of(
                new Opening("one", List.of(first.index()), false), new Opening("two", List.of(second.index()), true));
        assertThat(DOME.withOpenings(both).struts()).hasSize(65);
        List<Opening> gone = List.of(
                new Opening("one", List.of(first.index()), true), new Opening("two", List.of(second.index()), true));
        assertThat(DOME.withOpenings(gone).struts()).hasSize(64);
    }

    @Test
    void onlyTheSurfaceShrinks() {
        Dome opened = DOME.withOpenings(List.of(crown(true)));
        Measures whole = DOME.measures();
        double area = 0;
        for (Panel panel : panelsAt(0)) {
            double[] s = panel.struts().stream()
                    .mapToDouble(i -> DOME.struts().get(i).lengthMm())
                    .toArray();
            double half = (s[0] + s[1] + s[2]) / 2;
            area += Math.sqrt(half * (half - s[0]) * (half - s[1]) * (half - s[2]));
        }
        assertThat(opened.measures().surfaceAreaMm2())
                .isCloseTo(whole.surfaceAreaMm2() - area, within(1e-9 * whole.surfaceAreaMm2()));
        assertThat(opened.measures().less(opened.measures().surfaceAreaMm2()))
                .isEqualTo(whole.less(whole.surfaceAreaMm2()));
    }

    @Test
    void openingsReplaceEarlierOnesAndTheWholeIsAtHand() {
        List<Opening> crown = List.of(crown(true));
        Dome opened = DOME.withOpenings(List.of(opening(false, DOOR))).withOpenings(crown);
        assertThat(opened.panels()).hasSize(35);
        assertThat(opened.openings()).isEqualTo(crown);
        assertThat(opened.whole()).isSameAs(DOME);
        assertThat(DOME.whole()).isSameAs(DOME);
        assertThat(DOME.openings()).isEmpty();
        assertThat(opened.withOpenings(List.of())).isSameAs(DOME);
        assertThat(opened.spec()).isEqualTo(DOME.spec());
        assertThat(opened.radiusMm()).isEqualTo(R);
        assertThat(opened.notes()).isEqualTo(DOME.notes());
        assertThat(opened.leveling()).isEqualTo(DOME.leveling());
    }

    private static Problem refused(Opening... openings) {
        return catchThrowableOfType(CalotteException.class, () -> DOME.withOpenings(List.of(openings)))
                .problems()
                .get(0);
    }

    @Test
    void aPanelRemovedTwiceIsRefused() {
        Problem problem = refused(opening(true, DOOR), new Opening("window", List.of(DOOR.index()), false));
        assertThat(problem.code()).isEqualTo(Code.CONFLICT);
        assertThat(problem.where()).isEqualTo("openings");
        assertThat(problem.what()).isEqualTo("a panel is removed twice, by door and by window.");
    }

    @Test
    void anOpeningAsLargeAsTheDomeIsRefused() {
        Problem problem =
                refused(new Opening("all", IntStream.range(0, 40).boxed().toList(), false));
        assertThat(problem.code()).isEqualTo(Code.IMPOSSIBLE);
        assertThat(problem.what()).isEqualTo("the openings leave no panel.");
    }

    /** Without the second and third rows' panels the cap of five hangs in the air: 6 of its hubs against the others. */
    @Test
    void aFrameInPiecesIsRefused() {
        List<Integer> band = DOME.panels().stream()
                .filter(p -> p.row() == 2)
                .map(Panel::index)
                .toList();
        assertThat(DOME.withOpenings(List.of(new Opening("band", band, false))).struts())
                .hasSize(65);
        Problem problem = refused(new Opening("band", band, true));
        assertThat(problem.code()).isEqualTo(Code.IMPOSSIBLE);
        assertThat(problem.what())
                .matches("the openings split the frame: of 26 hubs that remain only 6 hang together\\.");
    }

    @Test
    void anOpeningHasANameAndAPanelThatThereIs() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Opening("", List.of(1), true));
        assertThatIllegalArgumentException().isThrownBy(() -> new Opening("door", List.of(), true));
        assertThatExceptionOfType(IndexOutOfBoundsException.class)
                .isThrownBy(() -> DOME.withOpenings(List.of(new Opening("door", List.of(40), true))));
    }
}
