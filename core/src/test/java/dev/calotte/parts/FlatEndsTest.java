package dev.calotte.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Hub;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Size;
import dev.calotte.dome.Strut;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem;
import dev.calotte.problem.Problem.Code;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FlatEndsTest {

    /** From hole to bend 40 mm. */
    private static final Ends.Flattened FLAT = new Ends.Flattened(60, 10, 20, OptionalDouble.empty());

    private static Dome dome(int frequency, int kept, int of) {
        return Dome.of(DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(frequency), Size.radius(3000))
                .withKeep(new Keep.Rows(kept, of)));
    }

    private static FlatEnds flat(StrutKind kind) {
        return kind.flatEnds().orElseThrow();
    }

    /**
     * The tube is 2 b (1 - cos) longer from hole to hole than the chord; b is 40 mm. The millimetres are common practice,
     * no source, printed to a tenth: 1V 12.0, 2V 3.1 and 3.9, 3V 1.2 to 1.7, 4V up to 1.1.
     */
    @ParameterizedTest
    @CsvSource({"1, 2, 3, 12.0, 12.0", "2, 1, 2, 3.1, 3.9", "3, 5, 9, 1.2, 1.7", "4, 1, 2, 0.6, 1.1"})
    void withOneBoltTheBendsMakeTheTubeLonger(int frequency, int kept, int of, double least, double most) {
        List<StrutKind> kinds = Parts.of(
                        dome(frequency, kept, of), Joinery.nodeToNode().withEnds(FLAT))
                .strutKinds();
        StrutKind longest = kinds.get(kinds.size() - 1);
        assertThat(flat(kinds.get(0)).holeToHoleMm() - kinds.get(0).lengthMm()).isCloseTo(least, within(0.06));
        assertThat(flat(longest).holeToHoleMm() - longest.lengthMm()).isCloseTo(most, within(0.06));
        for (StrutKind kind : kinds) {
            double more = 2 * 40 * (1 - StrictMath.cos(kind.axialAngleRad()));
            assertThat(flat(kind).holeToHoleMm()).isCloseTo(kind.lengthMm() + more, within(1e-9));
            assertThat(kind.cutLengthMm()).isCloseTo(flat(kind).holeToHoleMm() + 40, within(1e-9));
            assertThat(kind.gapsMm()).containsExactly(-20.0, -20.0);
            assertThat(flat(kind).holeFromEndMm()).isEqualTo(20);
            assertThat(flat(kind).bendFromEndMm()).isEqualTo(60);
            assertThat(flat(kind).bendAngleRad()).isEqualTo(kind.axialAngleRad());
            assertThat(flat(kind).outsideMm()).isCloseTo(40 * StrictMath.sin(kind.axialAngleRad()), within(1e-9));
        }
    }

    /** Walks along the bent tube in space: flat, bend, tube, bend, flat must lead from the one cut end to the other. */
    @Test
    void theBentTubeReachesFromHubToHub() {
        Dome dome = dome(3, 5, 9);
        HubGaps gaps = new HubGaps(OptionalDouble.of(90), Map.of(5, 30.0), OptionalDouble.of(40));
        Parts parts = Parts.of(dome, Joinery.nodeToNode().withHubGaps(gaps).withEnds(FLAT));
        for (Strut strut : dome.struts()) {
            Hub from = dome.hubs().get(strut.from());
            Hub to = dome.hubs().get(strut.to());
            Vector3D start = bend(from, to, gapOf(dome, from) + 60);
            Vector3D end = bend(to, from, gapOf(dome, to) + 60);
            StrutKind kind = parts.kindOf(strut);
            assertThat(kind.cutLengthMm()).isCloseTo(start.distance(end) + 120, within(1e-6));
            assertThat(flat(kind).holeToHoleMm()).isCloseTo(kind.cutLengthMm() - 40, within(1e-9));
            Vector3D middle = start.add(end).scalarMultiply(0.5);
            Vector3D chord = from.position().add(to.position()).scalarMultiply(0.5);
            double outside = middle.subtract(chord).dotProduct(chord.normalize());
            assertThat(flat(kind).outsideMm()).isCloseTo(outside, within(1e-6));
        }
    }

    private static double gapOf(Dome dome, Hub hub) {
        return hub.open() ? 90 : dome.around(hub.index()).size() == 5 ? 30 : 40;
    }

    /** Where a flat that leaves a hub along the plane that touches the sphere ends. */
    private static Vector3D bend(Hub hub, Hub towards, double distance) {
        Vector3D up = hub.position().normalize();
        Vector3D along = towards.position().subtract(hub.position());
        Vector3D flat = along.subtract(up.scalarMultiply(along.dotProduct(up))).normalize();
        return hub.position().add(flat.scalarMultiply(distance));
    }

    @Test
    void theHolesStandOnThePlatesCircleOrBehindTheGap() {
        Dome dome = dome(2, 1, 2);
        Joinery flat = Joinery.nodeToNode().withEnds(FLAT);
        HubPlate plate = HubPlate.of(160, 10, 120);
        List<StrutKind> onPlate = Parts.of(dome, flat.withHubPlate(plate)).strutKinds();
        assertThat(onPlate)
                .isEqualTo(Parts.of(dome, flat.withHubGaps(HubGaps.all(40))).strutKinds());
        assertThat(onPlate.get(0).gapsMm()).containsExactly(40.0, 40.0);
        StrutKind kind = onPlate.get(0);
        double cosine = StrictMath.cos(kind.axialAngleRad());
        assertThat(flat(kind).holeToHoleMm())
                .isCloseTo(kind.lengthMm() - 2 * (60 + 40) * cosine + 2 * 40, within(1e-9));
        assertThat(Parts.of(dome, flat.withHubPlate(plate).withHubGaps(HubGaps.all(40)))
                        .strutKinds())
                .isEqualTo(onPlate);
    }

    /** S1 of a 2V is 0.54653 of the radius; the flats span 2 x 40 mm x cos 15.86 degrees, 76.95 mm, of it. */
    @Test
    void flatsThatUseUpAStrutAreRefused() {
        DomeSpec spec = DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(2), Size.radius(140));
        Problem problem = catchThrowableOfType(
                        CalotteException.class,
                        () -> Parts.of(Dome.of(spec), Joinery.nodeToNode().withEnds(FLAT)))
                .problems()
                .get(0);
        assertThat(problem.code()).isEqualTo(Code.IMPOSSIBLE);
        assertThat(problem.where()).isEqualTo("frame.ends");
        assertThat(problem.what()).isEqualTo("its two flattened ends use up strut S1 (76.5 mm from node to node).");
        Dome larger = Dome.of(spec.withSize(Size.radius(142)));
        assertThat(Parts.of(larger, Joinery.nodeToNode().withEnds(FLAT)).strutKinds())
                .hasSize(2);
    }

    @Test
    void lengthsThatAreNoneAreRefused() {
        for (double wrong : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
            OptionalDouble none = OptionalDouble.empty();
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> new Ends.Flattened(wrong, 10, 20, none))
                    .withMessage("no flat is " + wrong + " mm");
            assertThatIllegalArgumentException().isThrownBy(() -> new Ends.Flattened(60, wrong, 20, none));
            assertThatIllegalArgumentException().isThrownBy(() -> new Ends.Flattened(60, 10, wrong, none));
            OptionalDouble wall = OptionalDouble.of(wrong);
            assertThatIllegalArgumentException().isThrownBy(() -> new Ends.Flattened(60, 10, 20, wall));
            assertThatIllegalArgumentException().isThrownBy(() -> new Ends.Mitred(wrong, 1));
            assertThatIllegalArgumentException().isThrownBy(() -> new Ends.Mitred(1, wrong));
            assertThatIllegalArgumentException().isThrownBy(() -> HubPlate.of(wrong, 1, 1));
            assertThatIllegalArgumentException().isThrownBy(() -> HubPlate.of(1, wrong, 1));
            assertThatIllegalArgumentException().isThrownBy(() -> HubPlate.of(1, 1, wrong));
            assertThatIllegalArgumentException().isThrownBy(() -> new HubPlate(1, 1, 1, wrong, 0, Optional.empty()));
        }
        for (double wrong : new double[] {-1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatIllegalArgumentException().isThrownBy(() -> new HubPlate(1, 1, 1, 1, wrong, Optional.empty()));
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Joinery.nodeToNode().withMergeWithin(wrong));
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Joinery.nodeToNode().withCutTolerance(wrong));
        }
        assertThat(Joinery.nodeToNode().withCutTolerance(0).cutToleranceMm()).isZero();
        assertThat(Joinery.nodeToNode().cutToleranceMm()).isEqualTo(1);
        assertThat(HubPlate.of(3, 2, 1)).isEqualTo(new HubPlate(3, 2, 1, 2, 0, Optional.empty()));
    }
}
