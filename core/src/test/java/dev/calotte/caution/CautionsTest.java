package dev.calotte.caution;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Size;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import java.util.List;
import org.junit.jupiter.api.Test;

class CautionsTest {

    @Test
    void loadsAreNeverVouchedFor() {
        assertThat(topics(300, new Keep.Whole())).startsWith("Geometry only");
        assertThat(cautions(300, new Keep.Whole()).get(0).line())
                .isEqualTo("Geometry only: Loads, members, joints and foundations are not checked.");
    }

    @Test
    void windSnowAndFallsAreNamedForLargeDomes() {
        assertThat(topics(2600, new Keep.Rows(1, 2))).contains("Wind and snow", "Heights", "Base");
        assertThat(topics(800, new Keep.Rows(1, 2)))
                .doesNotContain("Wind and snow", "Heights")
                .contains("Base");
    }

    @Test
    void aWholeSphereHasNoBase() {
        assertThat(topics(2600, new Keep.Whole())).doesNotContain("Base");
    }

    @Test
    void everyCautionFitsALineAndNamesWhomToAsk() {
        assertThat(cautions(3000, new Keep.Rows(1, 2))).allSatisfy(caution -> {
            assertThat(caution.line().length()).isLessThanOrEqualTo(78);
            assertThat(caution.line()).endsWith(".");
            assertThat(caution.deferTo()).isNotBlank();
        });
    }

    private static List<String> topics(double radiusMm, Keep keep) {
        return cautions(radiusMm, keep).stream().map(Caution::topic).toList();
    }

    private static List<Caution> cautions(double radiusMm, Keep keep) {
        DomeSpec spec = DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(2), Size.radius(radiusMm));
        return Cautions.of(Dome.of(spec.withKeep(keep)));
    }
}
