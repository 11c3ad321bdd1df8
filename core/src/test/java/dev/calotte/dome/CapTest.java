package dev.calotte.dome;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem.Code;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import java.util.function.IntPredicate;
import org.junit.jupiter.api.Test;

class CapTest {

    private static final Ball BALL = new Ball(DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(3), Size.radius(1)));

    private static void assertInPieces(IntPredicate stays) {
        CalotteException refusal = catchThrowableOfType(CalotteException.class, () -> new Cap(BALL, stays));
        assertThat(refusal.problems().get(0).code()).isEqualTo(Code.IMPOSSIBLE);
        assertThat(refusal.problems().get(0).where()).isEqualTo("dome.keep");
        assertThat(refusal).hasMessageContaining("falls into pieces or has more than one border");
    }

    @Test
    void twoCapsAreNotOneDome() {
        assertInPieces(t -> BALL.lastRow(t) <= 2 || BALL.lowest(t) < -0.9);
    }

    @Test
    void aBeltIsNotADome() {
        assertInPieces(t -> Math.abs(BALL.lowest(t)) < 0.5);
    }

    @Test
    void aDomeWithAWindowIsNotADome() {
        assertInPieces(t -> BALL.lastRow(t) > 2 && BALL.lowest(t) > -0.6);
    }

    @Test
    void aSphereWithTwoWindowsIsNotADome() {
        assertInPieces(t -> BALL.lastRow(t) > 1 && BALL.lowest(t) > -0.95);
    }

    @Test
    void aSphereWithOneWindowIsADisc() {
        Cap cap = new Cap(BALL, t -> BALL.lastRow(t) > 1);
        assertThat(cap.baseRing).hasSize(5);
        assertThat(cap.net.vertexCount() - cap.net.edgeCount() + cap.net.triangleCount())
                .isEqualTo(1);
    }

    @Test
    void theBorderBeginsAtItsLowestHub() {
        Cap cap = new Cap(BALL, t -> BALL.lastRow(t) <= 4);
        for (int hub : cap.baseRing) {
            assertThat(cap.baseRing[0]).isLessThanOrEqualTo(hub);
        }
        assertThat(cap.hubRows[cap.baseRing[0]]).isEqualTo(4);
    }
}
