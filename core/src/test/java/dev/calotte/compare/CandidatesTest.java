package dev.calotte.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Size;
import dev.calotte.problem.CalotteException;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Fitting;
import dev.calotte.sphere.Solid;
import dev.calotte.sphere.Spacing;
import dev.calotte.sphere.SphereMesh;
import dev.calotte.sphere.Up;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CandidatesTest {

    private static final DomeSpec FIVE_NINTHS =
            DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(3), Size.radius(3000)).withKeep(new Keep.Rows(5, 9));
    private static final Reach ALL = new Reach(
            1, Reach.MOST, List.of(Solid.values()), List.of(1, 2, 3), List.of(Spacing.values()), List.of(Up.values()));

    private static List<Candidate> of(DomeSpec spec, Reach reach) {
        return Candidates.of(Dome.of(spec), reach);
    }

    private static Set<String> breakdowns(List<Candidate> candidates, Solid solid) {
        return candidates.stream()
                .map(Candidate::shape)
                .filter(shape -> shape.solid() == solid)
                .map(shape -> shape.breakdown().toString())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** By hand, from the numbers of panels of whole spheres: 180 for the icosahedron's [3, 0]. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "ICOSAHEDRON; [1, 1] [2, 0] [2, 1] [2, 2] [3, 0] [3, 1] [4, 0]",
                "OCTAHEDRON; [2, 2] [3, 2] [3, 3] [4, 0] [4, 1] [5, 0] [6, 0]",
                "TETRAHEDRON; [3, 3] [4, 4] [5, 3] [6, 0] [6, 1] [7, 0] [8, 0]"
            })
    void breakdownsComeNearestInNumberOfPanels(Solid solid, String expected) {
        Set<String> found = breakdowns(of(FIVE_NINTHS, ALL), solid);
        assertThat(found).containsExactly(expected.split(" (?=\\[)"));
    }

    @Test
    void theOwnDomeIsFirstAndThereOnce() {
        List<Candidate> candidates = of(FIVE_NINTHS, Reach.USUAL);
        assertThat(candidates.get(0).own()).isTrue();
        assertThat(candidates.get(0).shape()).isEqualTo(FIVE_NINTHS.withSize(Size.radius(Candidate.UNIT_MM)));
        assertThat(candidates).filteredOn(Candidate::own).hasSize(1);
        assertThat(candidates).extracting(Candidate::shape).doesNotHaveDuplicates();
        assertThat(candidates).hasSize(100);
    }

    @Test
    void thoseThatDifferLeastComeFirst() {
        List<Candidate> candidates = of(FIVE_NINTHS, ALL);
        assertThat(candidates).isSortedAccordingTo(Comparator.comparingInt(Candidate::steps));
        Reach few = new Reach(
                1, 30, List.of(Solid.values()), List.of(1, 2, 3), List.of(Spacing.values()), List.of(Up.values()));
        assertThat(of(FIVE_NINTHS, few)).isEqualTo(candidates.subList(0, 30));
        assertThat(of(FIVE_NINTHS, few)).isEqualTo(of(FIVE_NINTHS, few));
    }

    @Test
    void oneStepAwayIsWhatDiffersInOneThing() {
        assertThat(of(FIVE_NINTHS, ALL))
                .filteredOn(candidate -> candidate.steps() == 1)
                .extracting(candidate -> candidate.shape().solid() + " "
                        + candidate.shape().breakdown() + " "
                        + candidate.shape().spacing() + " "
                        + candidate.shape().up()
                        + (candidate.shape().keep() instanceof Keep.Rows rows ? " " + rows : ""))
                .containsExactly(
                        "ICOSAHEDRON [3, 0] CHORD VERTEX 2/3",
                        "ICOSAHEDRON [3, 0] CHORD VERTEX 4/9",
                        "ICOSAHEDRON [3, 0] CHORD EDGE",
                        "ICOSAHEDRON [3, 0] CHORD FACE",
                        "ICOSAHEDRON [3, 0] ARC VERTEX 5/9",
                        "ICOSAHEDRON [3, 0] FITTED VERTEX 5/9",
                        "ICOSAHEDRON [4, 0] CHORD VERTEX 7/12",
                        "ICOSAHEDRON [2, 0] CHORD VERTEX 1/2",
                        "ICOSAHEDRON [2, 2] CHORD VERTEX",
                        "ICOSAHEDRON [2, 1] CHORD VERTEX",
                        "OCTAHEDRON [5, 0] CHORD VERTEX 3/5");
    }

    /** What a spacing or a row is refused for is known beforehand: only fitting fails, and flat or broken remains. */
    @ParameterizedTest
    @ValueSource(strings = {"ICOSAHEDRON", "OCTAHEDRON", "TETRAHEDRON"})
    void rowsAndSpacingsExist(Solid solid) {
        DomeSpec own = DomeSpec.of(solid, Breakdown.of(4), Size.radius(3000)).withKeep(new Keep.Rows(3, 4));
        for (Candidate candidate : of(own, ALL)) {
            if (candidate.shape().spacing() != Spacing.FITTED) {
                assertThat(Dome.of(candidate.at(3000)).radiusMm()).isEqualTo(3000);
            }
        }
    }

    /** The claim behind taking one spacing only. */
    @ParameterizedTest
    @CsvSource({"1,0,ARC", "2,0,ARC", "2,0,MIDARC", "2,0,FITTED", "1,1,FITTED"})
    void whereSymmetryPlacesAllPointsSpacingsAreEqual(int b, int c, Spacing spacing) {
        Breakdown breakdown = new Breakdown(b, c);
        Fitting any = new Fitting(Fitting.Goal.WIDTH, 3);
        for (Solid solid : Solid.values()) {
            double[] chord = SphereMesh.of(solid, breakdown, Spacing.CHORD).coordinates(Up.VERTEX);
            double[] other = SphereMesh.of(solid, breakdown, spacing, any).coordinates(Up.VERTEX);
            for (int i = 0; i < chord.length; i++) {
                assertThat(other[i]).isCloseTo(chord[i], within(1e-9));
            }
        }
    }

    @Test
    void rowsReachDownNearestToTheOwnLevel() {
        double own = lowest(Dome.of(FIVE_NINTHS.withSize(Size.radius(1))));
        DomeSpec four = FIVE_NINTHS.withBreakdown(Breakdown.of(4)).withSize(Size.radius(1));
        List<Keep.Rows> nearest = new RowLevels(Solid.ICOSAHEDRON, Breakdown.of(4)).nearest(own, 3);
        double farthestTaken = nearest.stream()
                .mapToDouble(rows -> Math.abs(lowest(Dome.of(four.withKeep(rows))) - own))
                .max()
                .orElseThrow();
        for (int rows = 2; rows < 12; rows++) {
            Keep.Rows fraction = new Keep.Rows(rows, 12);
            boolean taken = nearest.stream().anyMatch(n -> n.kept() * 12 == fraction.kept() * n.of());
            double away = Math.abs(lowest(Dome.of(four.withKeep(fraction))) - own);
            assertThat(taken).isEqualTo(away <= farthestTaken + 1e-12);
        }
    }

    private static double lowest(Dome dome) {
        return dome.hubs().stream()
                .mapToDouble(hub -> hub.position().getZ())
                .min()
                .orElseThrow();
    }

    @Test
    void wholeSpheresStandInTheirOwnPlaceOneWayUp() {
        DomeSpec whole = DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(3), Size.radius(3000));
        assertThat(of(whole, ALL)).allSatisfy(candidate -> {
            assertThat(candidate.shape().keep()).isEqualTo(new Keep.Whole());
            assertThat(candidate.shape().up()).isEqualTo(Up.VERTEX);
        });
    }

    @Test
    void aHeightIsKeptAsAPartOfTheRadius() {
        DomeSpec above = FIVE_NINTHS.withKeep(new Keep.AboveHeight(300));
        Candidate own = of(above, Reach.USUAL).get(0);
        assertThat(own.at(3000).keep()).isEqualTo(new Keep.AboveHeight(300));
        assertThat(own.at(6000).keep()).isEqualTo(new Keep.AboveHeight(600));
    }

    /** Half an even chord sphere is the same by rows and by height. */
    @Test
    void theOwnPanelsAreNotListedAgainByRows() {
        DomeSpec half = FIVE_NINTHS.withBreakdown(Breakdown.of(4)).withKeep(new Keep.AboveHeight(0));
        List<Candidate> candidates = of(half, ALL);
        assertThat(candidates.get(0).shape().keep()).isEqualTo(new Keep.AboveHeight(0));
        assertThat(candidates)
                .extracting(Candidate::shape)
                .doesNotContain(candidates.get(0).shape().withKeep(new Keep.Rows(1, 2)))
                .contains(candidates.get(0).shape().withKeep(new Keep.Rows(5, 12)));
    }

    @Test
    void theReachNarrowsAllButTheOwnDome() {
        Reach narrow = new Reach(
                2, Reach.MOST, List.of(Solid.OCTAHEDRON), List.of(1), List.of(Spacing.ARC), List.of(Up.VERTEX));
        List<Candidate> candidates = of(FIVE_NINTHS, narrow);
        assertThat(candidates.get(0).own()).isTrue();
        assertThat(candidates.subList(1, candidates.size())).allSatisfy(candidate -> {
            assertThat(candidate.shape().solid()).isEqualTo(Solid.OCTAHEDRON);
            assertThat(candidate.shape().breakdown().classNumber()).isEqualTo(1);
            assertThat(candidate.shape().spacing()).isEqualTo(Spacing.ARC);
            assertThat(candidate.shape().up()).isEqualTo(Up.VERTEX);
        });
        assertThat(candidates).hasSize(1 + 5 * 5);
    }

    @Test
    void mirrorImagesAreListedOnce() {
        DomeSpec left = FIVE_NINTHS.withBreakdown(new Breakdown(1, 2)).withKeep(new Keep.AboveHeight(0));
        assertThat(of(left, ALL))
                .allSatisfy(candidate -> assertThat(
                                candidate.shape().breakdown().b())
                        .isLessThanOrEqualTo(candidate.shape().breakdown().c()));
    }

    @Test
    void tooLargeADomeIsRefused() {
        Dome large = Dome.of(DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(32), Size.radius(3000)));
        assertThatExceptionOfType(CalotteException.class)
                .isThrownBy(() -> Candidates.of(large, Reach.USUAL))
                .withMessageContaining("20480");
    }
}
