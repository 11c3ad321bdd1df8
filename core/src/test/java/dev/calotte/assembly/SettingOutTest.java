package dev.calotte.assembly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.assembly.SettingOut.Diagonal;
import dev.calotte.assembly.SettingOut.Stake;
import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Opening;
import dev.calotte.dome.Panel;
import dev.calotte.dome.Size;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import java.util.List;
import org.junit.jupiter.api.Test;

class SettingOutTest {

    private static final double R = 3000;

    private static Dome dome(Solid solid, int n, int kept, int of) {
        return Dome.of(DomeSpec.of(solid, Breakdown.of(n), Size.radius(R)).withKeep(new Keep.Rows(kept, of)));
    }

    private static SettingOut of(Dome dome) {
        return SettingOut.of(Parts.of(dome, Joinery.nodeToNode()));
    }

    /** Half a 2V: ten hubs on the full circle, 36 degrees and 2 R sin 18 degrees apart, opposite hubs 2 R. */
    @Test
    void tenHubsStandEvenlyRoundTheCircle() {
        SettingOut out = of(dome(Solid.ICOSAHEDRON, 2, 1, 2));
        assertThat(out.stakes()).hasSize(10);
        double first = out.stakes().get(0).bearingRad();
        for (int i = 0; i < 10; i++) {
            Stake stake = out.stakes().get(i);
            assertThat(stake.mark()).matches("H[0-9]+[LR]?-3\\.[0-9]{2}");
            assertThat(stake.fromAxisMm()).isCloseTo(R, within(1e-9 * R));
            assertThat(stake.bearingRad()).isCloseTo(first + i * Math.PI / 5, within(1e-9));
            assertThat(stake.aboveLowestMm()).isCloseTo(0, within(1e-9 * R));
            assertThat(stake.levelChordMm()).isCloseTo(2 * R * Math.sin(Math.PI / 10), within(1e-9 * R));
            assertThat(stake.straightChordMm()).isCloseTo(stake.levelChordMm(), within(1e-9 * R));
        }
        assertThat(out.diagonals()).hasSize(3).allSatisfy(d -> {
            assertThat(d.levelMm()).isCloseTo(2 * R, within(1e-9 * R));
            assertThat(d.straightMm()).isCloseTo(2 * R, within(1e-9 * R));
        });
        assertThat(out.diagonals())
                .extracting(Diagonal::from)
                .containsExactly(
                        out.stakes().get(0).mark(),
                        out.stakes().get(1).mark(),
                        out.stakes().get(3).mark());
        assertThat(out.diagonals())
                .extracting(Diagonal::to)
                .containsExactly(
                        out.stakes().get(5).mark(),
                        out.stakes().get(6).mark(),
                        out.stakes().get(8).mark());
    }

    @Test
    void heightsAndChordsAreThoseOfTheHubs() {
        Dome dome = dome(Solid.ICOSAHEDRON, 3, 5, 9);
        SettingOut out = of(dome);
        assertThat(out.stakes()).hasSize(15);
        double highest =
                out.stakes().stream().mapToDouble(Stake::aboveLowestMm).max().orElseThrow();
        double lowest =
                out.stakes().stream().mapToDouble(Stake::aboveLowestMm).min().orElseThrow();
        assertThat(highest).isCloseTo(dome.measures().baseSpreadMm(), within(1e-9 * R));
        assertThat(lowest).isZero();
        double before = -1;
        for (int i = 0; i < 15; i++) {
            Stake stake = out.stakes().get(i);
            Stake next = out.stakes().get((i + 1) % 15);
            double rise = next.aboveLowestMm() - stake.aboveLowestMm();
            assertThat(stake.straightChordMm()).isCloseTo(Math.hypot(stake.levelChordMm(), rise), within(1e-9 * R));
            double turn = next.bearingRad() - stake.bearingRad();
            double square = stake.fromAxisMm() * stake.fromAxisMm()
                    + next.fromAxisMm() * next.fromAxisMm()
                    - 2 * stake.fromAxisMm() * next.fromAxisMm() * Math.cos(turn);
            assertThat(stake.levelChordMm()).isCloseTo(Math.sqrt(square), within(1e-9 * R));
            assertThat(stake.bearingRad()).isGreaterThan(before).isLessThan(2 * Math.PI - 1e-9);
            before = stake.bearingRad();
        }
        assertThat(out.diagonals())
                .hasSize(3)
                .allSatisfy(d -> assertThat(d.straightMm())
                        .isGreaterThan(0.98 * 2 * 0.985 * R)
                        .isGreaterThanOrEqualTo(d.levelMm()));
    }

    /** Three hubs have no diagonal, four have two: three places, the first two of which fall together. */
    @Test
    void smallRingsHaveFewDiagonals() {
        assertThat(of(dome(Solid.TETRAHEDRON, 2, 1, 2)).stakes()).hasSize(3);
        assertThat(of(dome(Solid.TETRAHEDRON, 2, 1, 2)).diagonals()).isEmpty();
        SettingOut four = of(dome(Solid.OCTAHEDRON, 1, 1, 2));
        assertThat(four.stakes()).hasSize(4);
        assertThat(four.stakes().get(0).bearingRad()).isZero();
        assertThat(four.diagonals()).hasSize(2);
        assertThat(four.diagonals().get(0).levelMm()).isCloseTo(2 * R, within(1e-9 * R));
    }

    @Test
    void anOpenedDomeIsSetOutByTheHubsThatRemain() {
        Dome whole = dome(Solid.ICOSAHEDRON, 3, 4, 9);
        int foot = whole.baseRing().get(3);
        List<Integer> panels = whole.panels().stream()
                .filter(p -> p.hubs().contains(foot))
                .map(Panel::index)
                .toList();
        SettingOut out = of(whole.withOpenings(List.of(new Opening("door", panels, true))));
        SettingOut before = of(whole);
        assertThat(out.stakes()).hasSize(14);
        assertThat(out.stakes().get(2).levelChordMm())
                .isGreaterThan(1.5 * before.stakes().get(2).levelChordMm());
        assertThat(out.stakes().get(3).bearingRad())
                .isEqualTo(before.stakes().get(4).bearingRad());
        assertThat(out.stakes().get(3).aboveLowestMm())
                .isEqualTo(before.stakes().get(4).aboveLowestMm());
    }

    @Test
    void aWholeSphereStandsNowhere() {
        SettingOut out = of(Dome.of(DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(2), Size.radius(R))));
        assertThat(out.stakes()).isEmpty();
        assertThat(out.diagonals()).isEmpty();
    }
}
