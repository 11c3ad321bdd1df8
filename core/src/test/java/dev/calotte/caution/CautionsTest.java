package dev.calotte.caution;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Opening;
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

    @Test
    void openingsAreToBeFramedAndDoorsChecked() {
        Dome dome = Dome.of(DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(2), Size.radius(2000))
                .withKeep(new Keep.Rows(1, 2)));
        List<Integer> crown = List.of(0, 1, 2, 3, 4);
        List<Caution> gone = Cautions.of(dome.withOpenings(List.of(new Opening("vent", crown, true))));
        List<Caution> kept = Cautions.of(dome.withOpenings(List.of(new Opening("vent", crown, false))));
        assertThat(gone)
                .extracting(Caution::line)
                .contains(
                        "Opening: You removed struts or hubs.",
                        "Door: Check exit width and height and escape window size.");
        assertThat(kept).extracting(Caution::line).contains("Opening: You left panels out and kept their struts.");
        assertThat(gone).hasSameSizeAs(kept).hasSize(Cautions.of(dome).size() + 2);
        assertThat(gone)
                .filteredOn(c -> c.topic().equals("Door"))
                .singleElement()
                .satisfies(door -> assertThat(door.deferTo()).isEqualTo("local code (US: IRC R310, R311)"));
        assertThat(gone).allSatisfy(c -> assertThat(c.line().length()).isLessThanOrEqualTo(78));
    }

    private static List<String> topics(double radiusMm, Keep keep) {
        return cautions(radiusMm, keep).stream().map(Caution::topic).toList();
    }

    private static List<Caution> cautions(double radiusMm, Keep keep) {
        DomeSpec spec = DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(2), Size.radius(radiusMm));
        return Cautions.of(Dome.of(spec.withKeep(keep)));
    }
}
