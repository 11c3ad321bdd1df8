package dev.calotte.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Size;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem;
import dev.calotte.problem.Problem.Code;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class JoineryTest {

    private static final Dome DOME = Dome.of(DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(2), Size.radius(1000)));
    private static final double SHORTEST = 1000 * 0.546533057825;

    @Test
    void bothEndsLoseTheGap() {
        Parts parts = Parts.of(DOME, Joinery.gap(30));
        assertThat(parts.strutKinds())
                .hasSize(2)
                .allSatisfy(kind -> assertThat(kind.cutLengthMm()).isCloseTo(kind.lengthMm() - 60, within(1e-9)));
        assertThat(parts.strutKinds().get(0).lengthMm()).isCloseTo(SHORTEST, within(1e-6));
        assertThat(parts.joinery()).isEqualTo(Joinery.gap(30));
        assertThat(parts.dome()).isSameAs(DOME);
    }

    @Test
    void strutsFromNodeToNodeLoseNothing() {
        assertThat(Parts.of(DOME, Joinery.nodeToNode()).strutKinds())
                .allSatisfy(kind -> assertThat(kind.cutLengthMm()).isEqualTo(kind.lengthMm()));
    }

    @Test
    void aGapThatUsesUpAStrutIsRefused() {
        for (double gap : new double[] {SHORTEST / 2 + 1e-6, 400}) {
            Problem problem = catchThrowableOfType(CalotteException.class, () -> Parts.of(DOME, Joinery.gap(gap)))
                    .problems()
                    .get(0);
            assertThat(problem.code()).isEqualTo(Code.IMPOSSIBLE);
            assertThat(problem.where()).isEqualTo("frame.hub-gap");
            assertThat(problem.what())
                    .isEqualTo("two gaps of " + String.format(Locale.ROOT, "%.1f", gap)
                            + " mm use up strut S1 (546.5 mm from node to node).");
            assertThat(problem.mend()).contains("less than 273.3 mm");
        }
        assertThat(Parts.of(DOME, Joinery.gap(SHORTEST / 2 - 1e-6))
                        .strutKinds()
                        .get(0)
                        .cutLengthMm())
                .isPositive();
    }

    @Test
    void aGapOfExactlyHalfAStrutLeavesNothing() {
        double half = Parts.of(DOME, Joinery.nodeToNode()).strutKinds().get(0).lengthMm() / 2;
        assertThat(catchThrowableOfType(CalotteException.class, () -> Parts.of(DOME, Joinery.gap(half))))
                .isNotNull();
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
    void aGapThatIsNoneIsRefused(double gap) {
        assertThatIllegalArgumentException().isThrownBy(() -> Joinery.gap(gap)).withMessageContaining(gap + " mm");
    }

    @Test
    void marksNameKindAndHand() {
        Parts parts = Parts.of(
                Dome.of(DomeSpec.of(Solid.ICOSAHEDRON, new Breakdown(2, 1), Size.radius(1000))), Joinery.nodeToNode());
        assertThat(parts.strutKinds()).extracting(StrutKind::mark).startsWith("S1", "S2", "S3");
        assertThat(parts.hubKinds()).extracting(HubKind::mark).containsExactly("H1", "H2R");
        assertThat(Hand.LEFT.letter() + Hand.RIGHT.letter() + Hand.NONE.letter())
                .isEqualTo("LR");
        assertThat(Hand.NONE.mirror()).isEqualTo(Hand.NONE);
        assertThat(Hand.LEFT.mirror()).isEqualTo(Hand.RIGHT);
    }
}
