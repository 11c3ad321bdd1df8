package dev.calotte.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Size;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem;
import dev.calotte.problem.Problem.Code;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class PlateArmsTest {

    private static final HubPlate PLATE = HubPlate.of(140, 10, 100);

    private static Dome dome(Solid solid, int frequency, Keep keep) {
        return Dome.of(
                DomeSpec.of(solid, Breakdown.of(frequency), Size.radius(3000)).withKeep(keep));
    }

    private static final Dome THREE = dome(Solid.ICOSAHEDRON, 3, new Keep.Rows(5, 9));

    private static PlateArms arms(Parts parts, String mark) {
        HubKind kind = parts.hubKinds().stream()
                .filter(k -> k.mark().equals(mark))
                .findFirst()
                .orElseThrow();
        return parts.plateArms(kind).orElseThrow();
    }

    /** Five struts 72 degrees apart: bend lines 45 mm out meet at 45 / cos 36 = 55.6 mm. */
    @Test
    void aHubOfFiveHasFiveEqualArms() {
        Parts parts = Parts.of(THREE, Joinery.gap(45).withHubPlate(PLATE));
        PlateArms plate = arms(parts, "H3");
        assertThat(plate.bendMm()).hasValue(45);
        assertThat(plate.arms()).hasSize(5);
        assertThat(plate.slots()).hasSize(5);
        for (int i = 0; i < 5; i++) {
            PlateArms.Arm arm = plate.arms().get(i);
            assertThat(Math.toDegrees(arm.angleRad())).isCloseTo(72 * i, within(1e-9));
            assertThat(Math.toDegrees(arm.leftRad())).isCloseTo(36, within(1e-9));
            assertThat(Math.toDegrees(arm.rightRad())).isCloseTo(36, within(1e-9));
            assertThat(arm.bendRad()).isEqualTo(parts.strutKinds().get(0).axialAngleRad());
            PlateArms.Slot slot = plate.slots().get(i);
            assertThat(Math.toDegrees(slot.angleRad())).isCloseTo(72 * i + 36, within(1e-9));
            assertThat(slot.fromMm()).isCloseTo(45 / Math.cos(Math.toRadians(36)), within(1e-9));
        }
    }

    /** The axial angles and gaps are those of the kind, in its order; each bend line is as far out as the hub's gap. */
    @Test
    void everyArmFollowsItsStrut() {
        HubGaps gaps = new HubGaps(OptionalDouble.of(30), Map.of(5, 40.0), OptionalDouble.of(45));
        Parts parts = Parts.of(THREE, Joinery.nodeToNode().withHubGaps(gaps).withHubPlate(PLATE));
        for (HubKind kind : parts.hubKinds()) {
            PlateArms plate = parts.plateArms(kind).orElseThrow();
            int n = kind.struts().size();
            assertThat(plate.bendMm()).hasValue(kind.open() ? 30 : n == 5 ? 40 : 45);
            double angle = 0;
            for (int i = 0; i < n; i++) {
                PlateArms.Arm arm = plate.arms().get(i);
                assertThat(arm.angleRad()).isCloseTo(angle, within(1e-12));
                assertThat(arm.bendRad()).isEqualTo(kind.axialAnglesRad().get(i));
                if (i < kind.gapsRad().size()) {
                    angle += kind.gapsRad().get(i);
                    assertThat(arm.leftRad()).isEqualTo(kind.gapsRad().get(i) / 2);
                    assertThat(plate.arms().get((i + 1) % n).rightRad()).isEqualTo(arm.leftRad());
                }
            }
            assertThat(plate.slots()).isSortedAccordingTo(Comparator.comparingDouble(PlateArms.Slot::angleRad));
        }
    }

    /** A base hub has a slot beside its first and its last arm too, as far off as on their other sides. */
    @Test
    void aBaseHubHasSlotsOnItsOpenSide() {
        Parts parts = Parts.of(THREE, Joinery.gap(45).withHubPlate(PLATE));
        PlateArms plate = arms(parts, "H2");
        assertThat(plate.arms()).hasSize(4);
        assertThat(plate.slots()).hasSize(5);
        double half = Math.toRadians(30);
        assertThat(plate.arms().get(0).rightRad()).isCloseTo(half, within(1e-9));
        assertThat(plate.arms().get(3).leftRad()).isCloseTo(half, within(1e-9));
        assertThat(plate.slots())
                .extracting(slot -> Math.round(Math.toDegrees(slot.angleRad())))
                .containsExactly(-30L, 30L, 90L, 150L, 210L);
        assertThat(plate.slots())
                .allSatisfy(slot -> assertThat(slot.fromMm()).isCloseTo(45 / Math.cos(half), within(1e-9)));
    }

    /** All but one face of an icosahedron stay: the open side is one gap of 72 degrees and has one slot in its middle. */
    @Test
    void aNarrowOpenSideHasOneSlot() {
        HubKind hub = new HubKind(
                1,
                Hand.NONE,
                List.of(1, 1, 1, 1, 1),
                List.of(rad(76), rad(76), rad(76), rad(76)),
                List.of(0.5, 0.5, 0.5, 0.5, 0.5),
                true,
                java.util.Optional.empty(),
                1);
        PlateArms plate = PlateArms.of(hub, Joinery.gap(30), PLATE);
        assertThat(plate.arms().get(0).rightRad()).isCloseTo(rad(28), within(1e-12));
        assertThat(plate.arms().get(4).leftRad()).isCloseTo(rad(28), within(1e-12));
        assertThat(plate.slots()).hasSize(5);
        assertThat(plate.slots().get(4).angleRad()).isCloseTo(rad(332), within(1e-12));
    }

    /** A corner of a tetrahedron: three struts 120 degrees apart; bend lines 45 mm out would meet at 90 mm, off the disc. */
    @Test
    void bendLinesThatDoNotMeetOnTheDiscNeedNoSlot() {
        Dome tetrahedron = dome(Solid.TETRAHEDRON, 1, new Keep.Whole());
        assertThat(arms(Parts.of(tetrahedron, Joinery.gap(45).withHubPlate(PLATE)), "H1")
                        .slots())
                .isEmpty();
        assertThat(arms(Parts.of(tetrahedron, Joinery.gap(35).withHubPlate(PLATE)), "H1")
                        .slots())
                .isEmpty();
        assertThat(arms(Parts.of(tetrahedron, Joinery.gap(34.9).withHubPlate(PLATE)), "H1")
                        .slots())
                .hasSize(3);
    }

    /** By hand: walls of slots 8 mm wide, 90 degrees apart, meet 4 / tan 45 = 4 mm out along each, where slots begin that
     * have their bend lines 4 cos 45 mm out. */
    @Test
    void slotsDoNotRunIntoOneAnother() {
        HubPlate plate = PLATE.withSlot(8);
        Dome octahedra = dome(Solid.OCTAHEDRON, 1, new Keep.Whole());
        assertThat(catchThrowableOfType(
                                CalotteException.class,
                                () -> arms(Parts.of(octahedra, Joinery.gap(2.8).withHubPlate(plate)), "H1"))
                        .problems()
                        .get(0)
                        .what())
                .isEqualTo("slots of 8.0 mm at hub H1 run into one another.");
        assertThat(arms(Parts.of(octahedra, Joinery.gap(2.9).withHubPlate(plate)), "H1")
                        .slots())
                .hasSize(4);
    }

    /** Slots from 69.8 mm to the rim at 70 mm can be burnt, but no cutter of 2 mm makes a round end in them. */
    @Test
    void roundEndsNeedALongSlot() {
        Dome tetrahedron = dome(Solid.TETRAHEDRON, 1, new Keep.Whole());
        Joinery joinery = Joinery.gap(34.9);
        assertThat(catchThrowableOfType(
                                CalotteException.class,
                                () -> arms(Parts.of(tetrahedron, joinery.withHubPlate(PLATE.withCutter(2))), "H1"))
                        .problems()
                        .get(0)
                        .what())
                .isEqualTo("slots of 2.0 mm at hub H1 are too short for round ends.");
        assertThat(arms(Parts.of(tetrahedron, Joinery.gap(34).withHubPlate(PLATE.withCutter(2))), "H1")
                        .slots())
                .hasSize(3);
    }

    @Test
    void withoutAGapTheBendLiesHalfWayToTheHoles() {
        assertThat(arms(Parts.of(THREE, Joinery.nodeToNode().withHubPlate(PLATE)), "H3")
                        .bendMm())
                .hasValue(25);
        assertThat(arms(Parts.of(THREE, Joinery.gap(0).withHubPlate(PLATE)), "H3")
                        .bendMm())
                .hasValue(25);
    }

    @Test
    void aPlateForBentTubesStaysFlat() {
        Ends flat = new Ends.Flattened(60, 10, 20, OptionalDouble.empty());
        Parts parts = Parts.of(THREE, Joinery.nodeToNode().withEnds(flat).withHubPlate(PLATE));
        PlateArms plate = arms(parts, "H3");
        assertThat(plate.bendMm()).isEmpty();
        assertThat(plate.slots()).isEmpty();
        assertThat(plate.arms())
                .hasSize(5)
                .allSatisfy(arm -> assertThat(arm.bendRad()).isZero());
        assertThat(Parts.of(THREE, Joinery.gap(45)).plateArms(parts.hubKinds().get(0)))
                .isEmpty();
    }

    /**
     * The narrowest gap of a 3V is 55.69 degrees: on a circle of 100 mm an arm is 100 sin 27.85 - 2 = 44.7 mm wide at its
     * hole, and so takes holes of up to 22.3 mm.
     */
    @Test
    void anArmIsTwoHolesWide() {
        Joinery wide = Joinery.gap(40).withHubPlate(HubPlate.of(200, 22.4, 100));
        Problem problem = catchThrowableOfType(CalotteException.class, () -> Parts.of(THREE, wide))
                .problems()
                .get(0);
        assertThat(problem.code()).isEqualTo(Code.IMPOSSIBLE);
        assertThat(problem.where()).isEqualTo("frame.hub-plate");
        assertThat(problem.what())
                .isEqualTo("an arm of hub H4 is 44.7 mm wide at its hole, less than two holes of 22.4 mm.");
        assertThat(arms(Parts.of(THREE, Joinery.gap(40).withHubPlate(HubPlate.of(200, 22.3, 100))), "H4")
                        .arms())
                .hasSize(6);
    }

    private static double rad(double degrees) {
        return Math.toRadians(degrees);
    }
}
