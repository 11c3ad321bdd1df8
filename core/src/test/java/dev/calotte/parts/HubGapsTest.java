package dev.calotte.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Hub;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Size;
import dev.calotte.dome.Strut;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem;
import dev.calotte.problem.Problem.Code;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HubGapsTest {

    private static final Dome DOME = Dome.of(
            DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(3), Size.radius(3000)).withKeep(new Keep.Rows(5, 9)));
    private static final HubGaps GAPS =
            new HubGaps(OptionalDouble.of(60), Map.of(5, 45.0, 6, 50.0), OptionalDouble.of(70));
    private static final Parts PARTS = Parts.of(DOME, Joinery.gap(0).withHubGaps(GAPS));

    private static double gap(int hub) {
        Hub at = DOME.hubs().get(hub);
        return at.open() ? 60 : DOME.around(hub).size() == 5 ? 45 : 50;
    }

    private static Problem refusal(HubGaps gaps) {
        return catchThrowableOfType(
                        CalotteException.class,
                        () -> Parts.of(DOME, Joinery.nodeToNode().withHubGaps(gaps)))
                .problems()
                .get(0);
    }

    @Test
    void eachEndLosesTheGapOfItsHub() {
        for (Strut strut : DOME.struts()) {
            StrutKind kind = PARTS.kindOf(strut);
            double from = gap(strut.from());
            double to = gap(strut.to());
            assertThat(kind.gapsMm()).containsExactly(Math.min(from, to), Math.max(from, to));
            assertThat(kind.lengthMm()).isCloseTo(strut.lengthMm(), within(1e-6));
            assertThat(kind.cutLengthMm()).isCloseTo(strut.lengthMm() - from - to, within(1e-6));
        }
    }

    /** Counted by hand: S1 leaves the 5-strut hubs, S2 and S3 run between 6-strut hubs, to the base and along it. */
    @Test
    void strutsOfOneLengthWithUnequalGapsAreKindsOfTheirOwn() {
        assertThat(PARTS.strutKinds())
                .extracting(StrutKind::mark)
                .containsExactly("S1", "S2", "S3", "S4", "S5", "S6", "S7");
        assertThat(PARTS.strutKinds())
                .extracting(StrutKind::gapsMm)
                .containsExactly(
                        List.of(45.0, 50.0),
                        List.of(60.0, 60.0),
                        List.of(50.0, 60.0),
                        List.of(50.0, 50.0),
                        List.of(60.0, 60.0),
                        List.of(50.0, 60.0),
                        List.of(50.0, 50.0));
        assertThat(PARTS.strutKinds()).extracting(StrutKind::count).containsExactly(30, 5, 10, 40, 10, 20, 50);
    }

    @Test
    void panelsDoNotMindHowTheirStrutsEnd() {
        List<PanelKind> plain = Parts.of(DOME, Joinery.nodeToNode()).panelKinds();
        assertThat(PARTS.panelKinds()).extracting(PanelKind::count).containsExactly(30, 75);
        assertThat(PARTS.panelKinds())
                .extracting(PanelKind::triangle)
                .isEqualTo(plain.stream().map(PanelKind::triangle).toList());
        assertThat(PARTS.panelKinds())
                .extracting(PanelKind::struts)
                .containsExactly(List.of(1, 1, 2), List.of(2, 5, 5));
    }

    @Test
    void hubsListTheKindsOfTheirStruts() {
        for (Hub hub : DOME.hubs()) {
            List<Integer> around = DOME.around(hub.index()).stream()
                    .map(spoke -> PARTS.kindOf(DOME.struts().get(spoke.strut())).number())
                    .sorted()
                    .toList();
            assertThat(PARTS.kindOf(hub).struts().stream().sorted().toList()).isEqualTo(around);
        }
    }

    @Test
    void equalGapsTellNoStrutsApart() {
        HubGaps equal = new HubGaps(OptionalDouble.of(45), Map.of(5, 45.0), OptionalDouble.of(45));
        assertThat(Parts.of(DOME, Joinery.nodeToNode().withHubGaps(equal)).strutKinds())
                .isEqualTo(Parts.of(DOME, Joinery.gap(45)).strutKinds());
    }

    @Test
    void whatIsNamedComesBeforeTheOthers() {
        assertThat(GAPS.ofMm(true, 5)).isEqualTo(60);
        assertThat(GAPS.ofMm(false, 5)).isEqualTo(45);
        assertThat(GAPS.ofMm(false, 4)).isEqualTo(70);
        assertThat(HubGaps.all(45).ofMm(true, 4)).isEqualTo(45);
        assertThat(HubGaps.all(45).everywhereMm()).hasValue(45);
        assertThat(GAPS.everywhereMm()).isEmpty();
        assertThat(new HubGaps(OptionalDouble.empty(), Map.of(5, 1.0), OptionalDouble.of(2)).everywhereMm())
                .isEmpty();
        assertThat(new HubGaps(OptionalDouble.of(1), Map.of(), OptionalDouble.of(2)).everywhereMm())
                .isEmpty();
    }

    @Test
    void aHubThatNoGapIsGivenForIsNamed() {
        Problem inner = refusal(new HubGaps(OptionalDouble.of(60), Map.of(5, 45.0), OptionalDouble.empty()));
        assertThat(inner.code()).isEqualTo(Code.MISSING);
        assertThat(inner.where()).isEqualTo("frame.hub-gap");
        assertThat(inner.what()).isEqualTo("no gap is given for inner hubs of 6 struts.");
        assertThat(inner.mend()).startsWith("Add 6: or other: ");
        Problem base = refusal(new HubGaps(OptionalDouble.empty(), Map.of(5, 45.0, 6, 45.0), OptionalDouble.empty()));
        assertThat(base.what()).isEqualTo("no gap is given for hubs of the base ring.");
        assertThat(base.mend()).startsWith("Add base: or other: ");
    }

    /** S1 of a 3V is 0.348615 of the radius: 1045.8 mm. */
    @Test
    void unequalGapsThatUseUpAStrutAreBothNamed() {
        Problem problem = refusal(new HubGaps(OptionalDouble.empty(), Map.of(5, 445.9), OptionalDouble.of(600)));
        assertThat(problem.code()).isEqualTo(Code.IMPOSSIBLE);
        assertThat(problem.what())
                .isEqualTo("gaps of 445.9 mm and 600.0 mm use up strut S1 (1045.8 mm from node to node).");
        assertThat(problem.mend()).contains("less than 1045.8 mm together,");
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
    void gapsThatAreNoneAreRefused(double mm) {
        OptionalDouble wrong = OptionalDouble.of(mm);
        OptionalDouble right = OptionalDouble.of(1);
        assertThatIllegalArgumentException().isThrownBy(() -> new HubGaps(wrong, Map.of(), right));
        assertThatIllegalArgumentException().isThrownBy(() -> new HubGaps(right, Map.of(5, mm), right));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new HubGaps(right, Map.of(), wrong))
                .withMessage("no hub gap is " + mm + " mm");
    }
}
