package dev.calotte.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Size;
import dev.calotte.dome.Size.Measure;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem;
import dev.calotte.problem.Problem.Code;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class LongestCutTest {

    private static final DomeSpec SPEC =
            DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(3), Size.radius(1)).withKeep(new Keep.Rows(5, 9));
    private static final Ends.Flattened FLAT = new Ends.Flattened(60, 10, 20, OptionalDouble.empty());
    private static final HubGaps UNEQUAL = new HubGaps(OptionalDouble.of(90), Map.of(5, 30.0), OptionalDouble.of(40));

    private static Parts parts(DomeSpec spec, Joinery joinery, double wantedMm) {
        return Parts.of(Dome.of(spec.withSize(LongestCut.size(spec, joinery, wantedMm))), joinery);
    }

    private static double longest(Parts parts) {
        return parts.strutKinds().stream()
                .mapToDouble(StrutKind::cutLengthMm)
                .max()
                .orElseThrow();
    }

    @Test
    void theLongestCutStrutIsAsLongAsWanted() {
        for (Joinery joinery : List.of(
                Joinery.nodeToNode(),
                Joinery.gap(44.45),
                Joinery.nodeToNode().withHubGaps(UNEQUAL),
                Joinery.nodeToNode().withEnds(FLAT),
                Joinery.gap(30).withEnds(FLAT),
                Joinery.nodeToNode().withHubGaps(UNEQUAL).withEnds(FLAT),
                Joinery.nodeToNode().withEnds(FLAT).withHubPlate(HubPlate.of(160, 10, 120)),
                Joinery.nodeToNode().withEnds(new Ends.Mitred(45, 95)))) {
            assertThat(longest(parts(SPEC, joinery, 1524))).isCloseTo(1524, within(1e-6));
        }
    }

    @Test
    void whereAllStrutsLoseTheSameTheLongestIsTheLongest() {
        assertThat(LongestCut.size(SPEC, Joinery.nodeToNode(), 1500)).isEqualTo(new Size(Measure.LONGEST_STRUT, 1500));
        assertThat(LongestCut.size(SPEC, Joinery.gap(45), 1500)).isEqualTo(new Size(Measure.LONGEST_STRUT, 1590));
        assertThat(LongestCut.size(SPEC, Joinery.gap(45).withEnds(FLAT), 1500).measure())
                .isEqualTo(Measure.RADIUS);
        assertThat(LongestCut.size(SPEC, Joinery.nodeToNode().withHubGaps(UNEQUAL), 1500)
                        .measure())
                .isEqualTo(Measure.RADIUS);
    }

    /**
     * 3V 5/9 with hub gaps of 1 3/4 in and a longest cut strut of 5 ft: 30 and 75 panels with edges of 5 ft 3 1/2 in, 5 ft
     * 2 1/8 in and 4 ft 5 5/8 in; common practice, no source.
     */
    @Test
    void aDomeOfFiveFootStrutsComesOut() {
        Parts parts = parts(SPEC, Joinery.gap(1.75 * 25.4), 5 * 304.8);
        assertThat(parts.panelKinds()).extracting(PanelKind::count).containsExactly(30, 75);
        List<StrutKind> kinds = parts.strutKinds();
        assertThat(kinds.get(2).lengthMm() / 25.4).isCloseTo(63.5, within(1e-9));
        assertThat(kinds.get(1).lengthMm() / 25.4).isCloseTo(62.125, within(0.125));
        assertThat(kinds.get(0).lengthMm() / 25.4).isCloseTo(53.625, within(0.125));
    }

    @Test
    void aDomeAboveAHeightIsSizedOnlyWhereAllStrutsLoseTheSame() {
        DomeSpec above = SPEC.withKeep(new Keep.AboveHeight(300));
        assertThat(longest(parts(above, Joinery.gap(45), 1000))).isCloseTo(1000, within(1e-6));
        for (Joinery joinery : List.of(
                Joinery.nodeToNode().withHubGaps(UNEQUAL), Joinery.nodeToNode().withEnds(FLAT))) {
            Problem problem = catchThrowableOfType(CalotteException.class, () -> LongestCut.size(above, joinery, 1000))
                    .problems()
                    .get(0);
            assertThat(problem.code()).isEqualTo(Code.CONFLICT);
            assertThat(problem.where()).isEqualTo("size.longest-cut");
        }
        DomeSpec half = SPEC.withKeep(new Keep.AboveHeight(0));
        assertThat(longest(parts(half, Joinery.nodeToNode().withEnds(FLAT), 1000)))
                .isCloseTo(1000, within(1e-6));
    }

    /** Two flats of 60 mm and gaps of 30 to 90 mm. */
    @Test
    void somethingIsLeftBetweenTheFlats() {
        Joinery flat = Joinery.nodeToNode().withHubGaps(UNEQUAL).withEnds(FLAT);
        Problem problem = catchThrowableOfType(CalotteException.class, () -> LongestCut.size(SPEC, flat, 180))
                .problems()
                .get(0);
        assertThat(problem.code()).isEqualTo(Code.IMPOSSIBLE);
        assertThat(problem.where()).isEqualTo("size.longest-cut");
        assertThat(problem.what()).isEqualTo("180.0 mm leave nothing between the flattened ends.");
        assertThat(problem.mend()).isEqualTo("Give more than 180.0 mm, or flatten less.");
        assertThat(LongestCut.size(SPEC, flat, 180.1).value()).isPositive();
    }
}
