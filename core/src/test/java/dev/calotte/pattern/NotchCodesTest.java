package dev.calotte.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.pattern.PatternKey.Code;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The places are those that the class documents, worked out by hand: the first at 0.15, then every 18 mm or nearer. */
class NotchCodesTest {

    private static final Allowances WIDE = Allowances.of(15, 50);

    private static List<Notch> notches(int joints, Code code, double strutMm) {
        return new NotchCodes(joints, WIDE).notches(code, strutMm, 15);
    }

    private static void assertAt(List<Notch> notches, double... places) {
        assertThat(notches).hasSize(places.length);
        for (int i = 0; i < places.length; i++) {
            assertThat(notches.get(i).alongMm()).isCloseTo(places[i], within(1e-9));
        }
    }

    @Test
    void theNumberOfTheJointIsWrittenFromTheHigherEnd() {
        assertAt(notches(8, new Code(0, true), 1000), 150);
        assertAt(notches(8, new Code(1, true), 1000), 150, 168);
        assertAt(notches(8, new Code(2, true), 1000), 150, 186);
        assertAt(notches(8, new Code(7, true), 1000), 150, 168, 186, 204);
        assertAt(notches(8, new Code(6, false), 1000), 796, 814, 850);
        assertThat(notches(8, Code.NONE, 1000)).isEmpty();
    }

    @Test
    void onShortStrutsTheyStandNearerSoThatAllStayInOneHalf() {
        // 0.27 * 100 mm for so many bits: 1 for one or two joints, 2 for three and four, 3 for five to eight
        assertAt(notches(1, new Code(0, true), 100), 15);
        assertAt(notches(2, new Code(1, true), 60), 9, 9 + 16.2);
        assertAt(notches(3, new Code(1, true), 100), 15, 15 + 13.5);
        assertAt(notches(4, new Code(3, true), 100), 15, 15 + 13.5, 42);
        assertAt(notches(5, new Code(4, true), 100), 15, 42);
        assertAt(notches(8, new Code(7, false), 100), 58, 67, 76, 85);
    }

    /** Half of the narrower allowance, 5 mm and a third of the pitch: the least of the three, and never below 0. */
    @Test
    void theDepthIsTheLeastOfThreeBounds() {
        assertThat(depth(WIDE, 15, 1000)).isEqualTo(5);
        assertThat(depth(Allowances.of(9, 50), 9, 1000)).isEqualTo(4.5);
        assertThat(depth(new Allowances(8, 18, 50, Corner.POINTED, 0), 18, 1000))
                .isEqualTo(4);
        assertThat(depth(new Allowances(8, 18, 50, Corner.POINTED, 0), 6, 1000)).isEqualTo(3);
        assertThat(depth(WIDE, 15, 100)).isCloseTo(3, within(1e-12));
        assertThat(depth(Allowances.NONE, 0, 1000)).isEqualTo(0);
        assertThat(depth(Allowances.of(-3, 0), -3, 1000)).isEqualTo(0);
    }

    private static double depth(Allowances allowances, double allowanceMm, double strutMm) {
        return new NotchCodes(8, allowances)
                .notches(new Code(0, true), strutMm, allowanceMm)
                .get(0)
                .depthMm();
    }
}
