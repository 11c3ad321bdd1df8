package dev.calotte.assembly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.assembly.Accuracy.Dimple;
import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Size;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AccuracyTest {

    private static Accuracy accuracy(int n, Keep keep, double toleranceMm) {
        Dome dome = Dome.of(DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(n), Size.radius(3000))
                .withKeep(keep));
        return Accuracy.of(Parts.of(dome, Joinery.nodeToNode()), toleranceMm);
    }

    /** Twice the radius over the strut, since sin(axial angle) is half the chord factor; the ring by 1 / (2 sin). */
    @ParameterizedTest
    @CsvSource({"2, 1, 2, 3.66, 3.24, 1.62", "3, 5, 9, 5.74, 4.85, 2.40", "4, 1, 2, 7.90, 6.15, 3.20"})
    void errorsGrowWithTheFrequency(int n, int kept, int of, double most, double least, double ring) {
        Accuracy accuracy = accuracy(n, new Keep.Rows(kept, of), 1);
        Dimple first = accuracy.dimples().get(0);
        Dimple last = accuracy.dimples().get(accuracy.dimples().size() - 1);
        assertThat(first.mark()).isEqualTo("S1");
        assertThat(first.factor()).isEqualTo(first.heightMm()).isCloseTo(most, within(0.01));
        assertThat(last.factor()).isCloseTo(least, within(0.01));
        assertThat(accuracy.baseRadiusMm().orElseThrow()).isCloseTo(ring, within(0.01));
    }

    @Test
    void figuresAreInProportionToTheTolerance() {
        Accuracy one = accuracy(3, new Keep.Rows(5, 9), 1);
        Accuracy two = accuracy(3, new Keep.Rows(5, 9), 2);
        assertThat(two.toleranceMm()).isEqualTo(2);
        assertThat(two.dimples().get(1).heightMm())
                .isEqualTo(2 * one.dimples().get(1).heightMm());
        assertThat(two.dimples().get(1).factor()).isEqualTo(one.dimples().get(1).factor());
        assertThat(two.baseRadiusMm().orElseThrow())
                .isEqualTo(2 * one.baseRadiusMm().orElseThrow());
    }

    /** The derivation tried out: a hub of an octahedron pushed out by a little, and its four struts measured. */
    @Test
    void aHubPushedOutMakesItsStrutsLonger() {
        Dome dome = Dome.of(DomeSpec.of(Solid.OCTAHEDRON, Breakdown.of(1), Size.radius(1000)));
        Accuracy accuracy = Accuracy.of(Parts.of(dome, Joinery.nodeToNode()), 0.001);
        double push = accuracy.dimples().get(0).heightMm();
        double longer = Math.hypot(1000 + push, 1000) - Math.hypot(1000, 1000);
        assertThat(longer).isCloseTo(0.001, within(1e-8));
        assertThat(accuracy.baseRadiusMm()).isEmpty();
    }
}
