package dev.calotte.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Size;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem;
import dev.calotte.problem.Problem.Code;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class MergeTest {

    private static final Dome FOUR = Dome.of(
            DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(4), Size.radius(3000)).withKeep(new Keep.Rows(1, 2)));

    private static Parts merged(Dome dome, double mm) {
        return Parts.of(dome, Joinery.nodeToNode().withMergeWithin(mm));
    }

    @Test
    void nothingIsMergedWithoutAWord() {
        assertThat(merged(FOUR, 0).strutKinds())
                .hasSize(6)
                .allSatisfy(kind -> assertThat(kind.mergeErrorMm()).isZero());
        assertThat(merged(FOUR, 2).strutKinds()).isEqualTo(merged(FOUR, 0).strutKinds());
    }

    /** Textbook chords of a 4V: 0.25318, 0.29453, 0.29524, 0.29859, 0.31287, 0.32492; 0.29453 and 0.29524 lie 2.1 mm apart. */
    @Test
    void nearLengthsBecomeTheMiddleOfTheirRange() {
        List<StrutKind> plain = merged(FOUR, 0).strutKinds();
        List<StrutKind> kinds = merged(FOUR, 2.2).strutKinds();
        assertThat(kinds).hasSize(5);
        StrutKind both = kinds.get(1);
        double apart = plain.get(2).lengthMm() - plain.get(1).lengthMm();
        assertThat(apart).isBetween(2.1, 2.2);
        assertThat(both.lengthMm()).isCloseTo(plain.get(1).lengthMm() + apart / 2, within(1e-9));
        assertThat(both.mergeErrorMm()).isCloseTo(apart / 2, within(1e-9));
        assertThat(both.count()).isEqualTo(plain.get(1).count() + plain.get(2).count());
        assertThat(both.axialAngleRad()).isCloseTo(StrictMath.asin(both.lengthMm() / 6000), within(1e-12));
        assertThat(both.dihedrals())
                .hasSize(plain.get(1).dihedrals().size()
                        + plain.get(2).dihedrals().size());
        assertThat(kinds.get(0)).isEqualTo(plain.get(0));
        assertThat(kinds.get(4).lengthMm()).isEqualTo(plain.get(5).lengthMm());
    }

    /** 883.6, 885.7 and 895.8 mm: the first and the last are 12.2 mm apart, so 12 mm does not reach, 12.3 mm does. */
    @Test
    void groupsNeverRunOnFromNeighbourToNeighbour() {
        assertThat(merged(FOUR, 12).strutKinds()).extracting(StrutKind::count).containsExactly(30, 90, 30, 70, 30);
        assertThat(merged(FOUR, 12.3).strutKinds()).hasSize(4);
    }

    @Test
    void panelsWhoseSidesAreMergedLoseTheirHand() {
        assertThat(merged(FOUR, 0).panelKinds()).extracting(PanelKind::mark).contains("P3L", "P3R");
        Parts parts = merged(FOUR, 12.3);
        assertThat(parts.panelKinds()).extracting(PanelKind::hand).containsOnly(Hand.NONE);
        assertThat(parts.panelKinds().stream().mapToInt(PanelKind::count).sum()).isEqualTo(160);
        for (PanelKind kind : parts.panelKinds()) {
            assertThat(kind.triangle().a())
                    .isEqualTo(parts.strutKinds().get(kind.struts().get(0) - 1).lengthMm());
        }
    }

    @Test
    void everyStrutIsAsNearItsKindAsTheKindSays() {
        for (double mm : new double[] {0, 3, 15, 60, 250}) {
            Parts parts = merged(FOUR, mm);
            FOUR.struts().forEach(strut -> {
                StrutKind kind = parts.kindOf(strut);
                assertThat(kind.mergeErrorMm()).isLessThanOrEqualTo(mm / 2);
                assertThat(strut.lengthMm()).isCloseTo(kind.lengthMm(), within(kind.mergeErrorMm() + 1e-5));
            });
        }
    }

    /** The flat triangles of a tetrahedron in small parts, whose sides merge so that none is left of their height. */
    @Test
    void aPanelThatNoLongerClosesIsRefused() {
        Dome dome = Dome.of(DomeSpec.of(Solid.TETRAHEDRON, new Breakdown(3, 2), Size.radius(1000)));
        Problem problem = catchThrowableOfType(CalotteException.class, () -> merged(dome, 370))
                .problems()
                .get(0);
        assertThat(problem.code()).isEqualTo(Code.IMPOSSIBLE);
        assertThat(problem.where()).isEqualTo("frame.merge-within");
        assertThat(problem.mend()).isEqualTo("Merge less.");
    }

    /** Half a 4V with a longest strut of 5 ft: two kinds of 4 ft 6 1/2 in and 4 ft 6 3/8 in; common practice, no source. */
    @Test
    void nearKindsAreNamedWithTheirDifference() {
        Dome dome = Dome.of(FOUR.spec().withSize(new Size(Size.Measure.LONGEST_STRUT, 5 * 304.8)));
        Parts parts = Parts.of(dome, Joinery.nodeToNode().withCutTolerance(1.2));
        assertThat(parts.panelKinds().stream().mapToInt(PanelKind::count).sum()).isEqualTo(160);
        List<StrutKind> kinds = parts.strutKinds();
        assertThat(kinds.get(1).lengthMm()).isCloseTo(54.375 * 25.4, within(25.4 / 16));
        assertThat(kinds.get(2).lengthMm()).isCloseTo(54.5 * 25.4, within(25.4 / 16));
        assertThat(parts.closeKinds()).extracting(CloseKinds::first).containsExactly("S2");
        assertThat(parts.closeKinds()).extracting(CloseKinds::second).containsExactly("S3");
        double apart = kinds.get(2).lengthMm() - kinds.get(1).lengthMm();
        assertThat(parts.closeKinds().get(0).differenceMm()).isEqualTo(apart);
        assertThat(Parts.of(dome, Joinery.nodeToNode().withCutTolerance(apart / 3 + 1e-9))
                        .closeKinds())
                .hasSize(1);
        assertThat(Parts.of(dome, Joinery.nodeToNode().withCutTolerance(apart / 3 - 1e-9))
                        .closeKinds())
                .isEmpty();
    }

    @Test
    void panelsAreNearEachOtherByTheSideThatDiffersMost() {
        Parts parts = Parts.of(FOUR, Joinery.nodeToNode().withCutTolerance(15));
        List<CloseKinds> panels = parts.closeKinds().stream()
                .filter(pair -> pair.first().startsWith("P"))
                .toList();
        assertThat(panels).isNotEmpty().allSatisfy(pair -> {
            PanelKind one = kind(parts, pair.first());
            PanelKind other = kind(parts, pair.second());
            assertThat(one.number()).isLessThan(other.number());
            assertThat(pair.differenceMm()).isEqualTo(largest(one, other)).isLessThan(45);
        });
        Set<String> near = new TreeSet<>();
        for (PanelKind one : parts.panelKinds()) {
            parts.panelKinds().stream()
                    .filter(other -> other.number() > one.number() && largest(one, other) < 45)
                    .forEach(other -> near.add("P" + one.number() + " P" + other.number()));
        }
        assertThat(panels)
                .extracting(pair -> pair.first() + " " + pair.second())
                .doesNotHaveDuplicates()
                .hasSameElementsAs(near);
    }

    /** Gaps of 40 and 50 mm take as much as 45 and 45: nothing goes wrong where such struts are mixed up. */
    @Test
    void strutsThatAreCutAlikeAreNoPair() {
        assertThat(CloseKinds.of(List.of(cut(1, 1000), cut(2, 1000)), List.of(), 1))
                .isEmpty();
        assertThat(CloseKinds.of(List.of(cut(1, 1002), cut(2, 1004), cut(3, 1000)), List.of(), 1))
                .containsExactly(new CloseKinds("S3", "S1", 2), new CloseKinds("S1", "S2", 2));
        assertThat(CloseKinds.of(List.of(cut(1, 1000), cut(2, 1003)), List.of(), 1))
                .isEmpty();
    }

    private static StrutKind cut(int number, double mm) {
        return new StrutKind(number, 0.3, mm + 90, mm, List.of(45.0, 45.0), 0, 0.1, Optional.empty(), List.of(), 1);
    }

    /** Nearly all of the 20V's kinds are within 30 mm of each other. */
    @Test
    void nearPanelsAreListedUpToAThousandPairs() {
        Dome dome = Dome.of(DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(20), Size.radius(1000)));
        Parts parts = Parts.of(dome, Joinery.nodeToNode().withCutTolerance(10));
        assertThat(parts.closeKinds().stream().filter(pair -> pair.first().startsWith("P")))
                .hasSize(1000);
    }

    private static PanelKind kind(Parts parts, String mark) {
        return parts.panelKinds().stream()
                .filter(kind -> mark.equals("P" + kind.number()))
                .findFirst()
                .orElseThrow();
    }

    private static double largest(PanelKind one, PanelKind other) {
        return IntStream.range(0, 3)
                .mapToDouble(
                        k -> Math.abs(one.triangle().side(k) - other.triangle().side(k)))
                .max()
                .orElseThrow();
    }
}
