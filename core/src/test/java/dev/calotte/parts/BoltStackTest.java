package dev.calotte.parts;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Size;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BoltStackTest {

    private static Ends.Flattened tube(double holeMm, double wallMm) {
        return new Ends.Flattened(60, holeMm, 20, OptionalDouble.of(wallMm));
    }

    /**
     * Six ends of 3/4 in conduit of 1.25 mm are 15 mm thick: common practice, no source. The lengths are computed by hand:
     * grip, 1.2 diameters for washers and nut, two pitches, up to the next 5 mm.
     */
    @ParameterizedTest
    @CsvSource({
        "8.5, 1.25, 6, 8, 15, 30",
        "10, 1.25, 6, 8, 15, 30",
        "10.4, 1.25, 5, 8, 12.5, 25",
        "10.5, 1.25, 5, 10, 12.5, 30",
        "6.5, 1.25, 4, 6, 10, 20",
        "6.5, 1.35, 4, 6, 10.8, 20",
        "6.5, 1.36, 4, 6, 10.88, 25",
        "4.5, 1, 2, 4, 4, 15",
        "5.5, 1, 2, 5, 4, 15",
        "12.5, 2, 6, 12, 24, 45",
        "16.5, 2, 6, 16, 24, 50",
        "20.5, 2, 6, 20, 24, 55",
        "24.5, 2, 6, 24, 24, 60"
    })
    void theBoltReachesThroughAllEnds(
            double hole, double wall, int struts, double diameter, double grip, double length) {
        assertThat(BoltStack.of(tube(hole, wall), struts)).contains(new BoltStack(struts, diameter, grip, length));
    }

    @Test
    void aHoleThatTakesNoUsualBoltHasNone() {
        assertThat(BoltStack.of(tube(4.4, 1), 6)).isEmpty();
        assertThat(BoltStack.of(new Ends.Flattened(60, 10, 20, OptionalDouble.empty()), 6))
                .isEmpty();
    }

    /** 3V 5/9: base hubs of 4 struts, inner hubs of 5 and 6. */
    @Test
    void everyKindOfHubHasItsBoltWhereOneBoltHoldsAll() {
        Dome dome = Dome.of(DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(3), Size.radius(3000))
                .withKeep(new Keep.Rows(5, 9)));
        Joinery bolted = Joinery.nodeToNode().withEnds(tube(8.5, 1.25));
        Parts parts = Parts.of(dome, bolted);
        List<Double> lengths = parts.hubKinds().stream()
                .map(kind -> parts.boltStack(kind).orElseThrow().lengthMm())
                .toList();
        assertThat(lengths).containsExactly(25.0, 25.0, 25.0, 25.0, 30.0, 30.0);
        for (Joinery joinery : List.of(
                Joinery.nodeToNode(),
                bolted.withHubGaps(HubGaps.all(0)),
                bolted.withHubPlate(HubPlate.of(140, 10, 100)))) {
            Parts other = Parts.of(dome, joinery);
            assertThat(other.hubKinds()).extracting(other::boltStack).containsOnly(Optional.empty());
        }
    }
}
