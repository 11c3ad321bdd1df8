package dev.calotte.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Panel;
import dev.calotte.dome.Size;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem;
import dev.calotte.problem.Problem.Code;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class RailKindsTest {

    private static final Joinery RAILS = Joinery.nodeToNode().withEnds(new Ends.Mitred(45, 95));
    private static final Dome THREE = Dome.of(
            DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(3), Size.radius(3000)).withKeep(new Keep.Rows(5, 9)));

    private static Dome whole(int frequency) {
        return Dome.of(DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(frequency), Size.radius(3000)));
    }

    @Test
    void everyEdgeOfEveryPanelHasARail() {
        Parts parts = Parts.of(THREE, RAILS);
        assertThat(parts.railKinds().stream().mapToInt(RailKind::count).sum()).isEqualTo(3 * 105);
        Map<String, Integer> told = new TreeMap<>();
        parts.railKinds().forEach(kind -> told.merge(kind.panel() + kind.strut(), kind.count(), Integer::sum));
        Map<String, Integer> found = new TreeMap<>();
        for (Panel panel : THREE.panels()) {
            panel.struts()
                    .forEach(strut -> found.merge(
                            parts.kindOf(panel).mark()
                                    + parts.kindOf(THREE.struts().get(strut)).mark(),
                            1,
                            Integer::sum));
        }
        assertThat(told).isEqualTo(found);
        assertThat(Parts.of(THREE, Joinery.nodeToNode()).railKinds()).isEmpty();
    }

    @Test
    void railsOfTheBaseRingStandSquareToTheirPanels() {
        int square = Parts.of(THREE, RAILS).railKinds().stream()
                .filter(kind -> kind.tiltRad() == 0)
                .mapToInt(RailKind::count)
                .sum();
        assertThat(square).isEqualTo(THREE.baseRing().size());
    }

    /** An icosahedron: all corners 60 degrees, all dihedrals 138.189685, so tilts 20.9051575; one kind, both ends alike. */
    @Test
    void anIcosahedronHasOneKindOfRail() {
        List<RailKind> kinds = Parts.of(whole(1), RAILS).railKinds();
        assertThat(kinds).hasSize(1);
        RailKind rail = kinds.get(0);
        assertThat(rail.mark() + rail.panel() + rail.strut()).isEqualTo("R1P1S1");
        assertThat(rail.count()).isEqualTo(60);
        assertThat(Math.toDegrees(rail.tiltRad())).isCloseTo(20.9051575, within(1e-6));
        assertThat(rail.start().bladeTiltRad()).isCloseTo(rail.end().bladeTiltRad(), within(1e-12));
        assertThat(Math.toDegrees(rail.start().bladeTiltRad())).isCloseTo(54, within(1e-6));
        double edge = 3000 * 1.0514622242;
        double inner = 45 * Math.cos(rail.tiltRad()) / Math.tan(Math.PI / 6);
        double bottom = 95 * Math.tan(rail.start().gaugeRad());
        assertThat(rail.arrisesMm().get(0)).isCloseTo(edge, within(1e-5));
        assertThat(rail.arrisesMm().get(1)).isCloseTo(edge - 2 * inner, within(1e-5));
        assertThat(rail.arrisesMm().get(2)).isCloseTo(edge - 2 * bottom, within(1e-5));
        assertThat(rail.arrisesMm().get(3)).isCloseTo(edge - 2 * (inner + bottom), within(1e-5));
        assertThat(rail.longMm()).isEqualTo(rail.arrisesMm().get(0));
        assertThat(rail.shortMm()).isEqualTo(rail.arrisesMm().get(3));
    }

    /** The struts of a 5-strut hub stand 72 degrees apart and the rails are upright there, so each end is cut at 54. */
    @Test
    void atAHubOfFiveStrutsTheBladeIsTiltedByFiftyFourDegrees() {
        List<RailKind> kinds = Parts.of(whole(3), RAILS).railKinds();
        List<RailKind> atFive =
                kinds.stream().filter(kind -> kind.strut().equals("S1")).toList();
        assertThat(atFive).hasSize(2);
        for (RailKind rail : atFive) {
            double steep = Math.min(rail.start().bladeTiltRad(), rail.end().bladeTiltRad());
            assertThat(Math.toDegrees(steep)).isCloseTo(54, within(1e-6));
            assertThat(rail.count()).isEqualTo(60);
        }
        RailKind one = atFive.get(0);
        RailKind other = atFive.get(1);
        assertThat(one.start().bladeTiltRad()).isCloseTo(other.end().bladeTiltRad(), within(1e-12));
        assertThat(one.start().gaugeRad()).isCloseTo(other.end().gaugeRad(), within(1e-12));
        assertThat(one.start().bladeTiltRad()).isNotCloseTo(one.end().bladeTiltRad(), within(1e-3));
        assertThat(one.arrisesMm().get(3)).isCloseTo(other.arrisesMm().get(3), within(1e-9));
        assertThat(one.steepestRad())
                .isEqualTo(Math.max(one.start().bladeTiltRad(), one.end().bladeTiltRad()));
    }

    @Test
    void kindsRiseByTheirEdgesAndAreNumberedInThatOrder() {
        List<RailKind> kinds = Parts.of(THREE, RAILS).railKinds();
        for (int i = 0; i < kinds.size(); i++) {
            assertThat(kinds.get(i).number()).isEqualTo(i + 1);
            assertThat(kinds.get(i).longMm())
                    .isGreaterThanOrEqualTo(kinds.get(i).arrisesMm().get(0));
            if (i > 0) {
                assertThat(kinds.get(i).arrisesMm().get(0))
                        .isGreaterThanOrEqualTo(kinds.get(i - 1).arrisesMm().get(0));
            }
        }
    }

    /** Struts stay what they are from node to node; the rails are what is cut. */
    @Test
    void strutsOfRailsLoseNothing() {
        assertThat(Parts.of(THREE, RAILS).strutKinds())
                .isEqualTo(Parts.of(THREE, Joinery.nodeToNode()).strutKinds());
    }

    /** A rail's inner edge loses about 1.73 times its width at either end. */
    @Test
    void railsThatFillTheirPanelAreRefused() {
        Joinery wide = Joinery.nodeToNode().withEnds(new Ends.Mitred(400, 95));
        Problem problem = catchThrowableOfType(CalotteException.class, () -> Parts.of(THREE, wide))
                .problems()
                .get(0);
        assertThat(problem.code()).isEqualTo(Code.IMPOSSIBLE);
        assertThat(problem.where()).isEqualTo("frame.ends");
        assertThat(problem.what())
                .isEqualTo("rails of that section leave nothing of the inner edge on S1 of panel P1 (1045.8 mm).");
        Joinery narrow = Joinery.nodeToNode().withEnds(new Ends.Mitred(250, 95));
        assertThat(Parts.of(THREE, narrow).railKinds())
                .allSatisfy(kind -> assertThat(kind.shortMm()).isPositive());
    }
}
