package dev.calotte.stl.body;

import dev.calotte.document.Jig;
import dev.calotte.document.Jig.Arm;
import dev.calotte.document.PrintPlate;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;

/**
 * A hub with a socket for each strut, in two halves that meet in the struts' axes; a screw holds them together. The
 * inner half stands on its inside, the outer half on its outside, so both print without supports and their sockets come
 * out round. The inner half carries the marks: an arrow beside the first socket or, where that has no room, on a flap
 * before it; from there they are read counter-clockwise.
 */
final class SocketShape {

    /** For a screw of 3 mm, as holes print small. */
    static final double SCREW_HOLE = 3.4;

    private static final double BASE = 1.6;

    private final Jig.Socket jig;
    private final Seat seat;
    private final double reachMm;

    SocketShape(Jig.Socket jig, PrintPlate plate) {
        this.jig = jig;
        this.seat = new Seat(jig.strut(), plate.clearanceMm(), plate.wallMm(), 0);
        double steepest = jig.arms().stream().mapToDouble(Arm::tiltRad).max().orElseThrow();
        this.reachMm = (jig.endMm() + jig.depthMm()) * StrictMath.cos(steepest);
    }

    /** The inner half and the outer one. */
    List<Relief> halves() {
        return List.of(half(jig.arms(), 1), half(mirrored(), -1));
    }

    /** As seen from inside. */
    private List<Arm> mirrored() {
        List<Arm> arms = new ArrayList<>();
        for (Arm arm : jig.arms()) {
            arms.add(new Arm(
                    arm.mark(),
                    -arm.angleRad(),
                    /* rightRad= */ arm.leftRad(),
                    /* leftRad= */ arm.rightRad(),
                    arm.tiltRad()));
        }
        return arms;
    }

    /** With struts that fall outwards, or rise if the sign is below 0. */
    private Relief half(List<Arm> arms, int sign) {
        boolean inner = sign > 0;
        ArmPlan plan = new ArmPlan(arms, seat.outerMm(), 0, reachMm, inner ? seat.outerMm() + 9 : seat.outerMm());
        double node =
                arms.stream().mapToDouble(arm -> nodeOver(arm, sign)).max().orElseThrow();
        Relief relief = plan.foot(BASE, SCREW_HOLE / 2 + seat.wallMm());
        boolean flap = inner && !plan.isNamed(hub(), startMm(arms.get(0)));
        relief = flap ? plan.flap(relief, hub(), BASE) : relief;
        // where no strut is, so that what is between the first and the last hangs together
        double nearest = arms.stream().mapToDouble(this::startMm).min().orElseThrow();
        double disc = Math.min(seat.outerMm(), nearest) * StrictMath.cos(Math.PI / 24);
        relief = relief.cover(plan.middle().disc(disc, 24), Plane.level(node));
        for (Arm arm : arms) {
            Geometry block = plan.ownBox(arm, 0, startMm(arm), seat.outerMm());
            relief = relief.cover(block, Plane.level(node));
            relief = seat.walls(relief, run(plan, arm, sign, node), area -> plan.own(arm, area));
        }
        for (Arm arm : arms) {
            relief = seat.trough(relief, run(plan, arm, sign, node));
            relief = inner ? plan.mark(relief, arm, BASE, startMm(arm)) : relief;
        }
        relief = inner && !flap ? plan.start(relief, hub(), BASE, startMm(arms.get(0))) : relief;
        return relief.open(plan.middle().disc(SCREW_HOLE / 2, 24));
    }

    /** Where a socket begins, in plan: the lowest line of a strut reaches furthest in. */
    private double startMm(Arm arm) {
        return jig.endMm() * StrictMath.cos(arm.tiltRad()) - jig.strut().depthMm() / 2 * StrictMath.sin(arm.tiltRad());
    }

    private String hub() {
        return jig.mark().substring(jig.mark().indexOf('-') + 1);
    }

    private Seat.Run run(ArmPlan plan, Arm arm, int sign, double node) {
        double rise = -sign * StrictMath.tan(arm.tiltRad());
        return new Seat.Run(plan.axis(arm), node, rise, startMm(arm), reachMm);
    }

    /** How high the node stands so that the lowest place of an arm's socket leaves enough below it. */
    private double nodeOver(Arm arm, int sign) {
        double tangent = StrictMath.tan(arm.tiltRad());
        double lowest = sign > 0 ? reachMm * tangent : -startMm(arm) * tangent;
        double over = seat.depthMm() / StrictMath.cos(arm.tiltRad()) + lowest;
        // steep sockets rise so much that nothing would be left under the node
        return BASE + Math.max(seat.wallMm(), over);
    }
}
