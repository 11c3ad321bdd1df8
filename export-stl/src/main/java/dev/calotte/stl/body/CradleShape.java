package dev.calotte.stl.body;

import dev.calotte.document.Jig;
import dev.calotte.document.Jig.Arm;
import dev.calotte.document.PrintPlate;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * The jig of a hub, outside up: for each strut a trough at its angles, and a stop that the lowest line of its end
 * touches; between the stops a well with a hole in its middle, where the hub is put together. A foot of even height
 * carries all of it, with the strut's mark to the left of each trough, and to the right of the first one an arrow and
 * the mark of the hub. Flattened ends lie on a table in the middle instead, over holes for their bolts.
 */
final class CradleShape {

    /** Thickness of the foot. */
    static final double FOOT = 3;

    private static final double HIGHEST_STOP = 20;
    private static final double CENTRE_HOLE = 4;
    private static final double TAPER = 1.5;
    private static final double JOINT = 0.15;

    private final Jig.Cradle jig;
    private final PrintPlate plate;
    private final Seat seat;
    private final ArmPlan plan;
    private final double base;
    private final double node;

    CradleShape(Jig.Cradle jig, PrintPlate plate) {
        this.jig = jig;
        this.plate = plate;
        this.seat = new Seat(jig.strut(), plate.clearanceMm(), plate.wallMm(), plate.clearanceMm());
        this.plan = new ArmPlan(jig.arms(), seat.outerMm(), jig.turnRad(), jig.reachMm(), jig.footMm());
        this.base = Math.max(FOOT, plate.wallMm());
        this.node = jig.arms().stream().mapToDouble(this::nodeOver).max().orElseThrow();
    }

    /** How high the hub's centre has to be so that the end of an arm's trough does not sink into the foot. */
    private double nodeOver(Arm arm) {
        return base
                + jig.strut().depthMm() / 2 / StrictMath.cos(arm.tiltRad())
                + (jig.reachMm() - pivot()) * StrictMath.tan(arm.tiltRad());
    }

    /** Where the tilted part of a strut begins, in plan. */
    private double pivot() {
        return jig.flat().map(Jig.Flat::bendMm).orElse(0.0);
    }

    /** The middle with whatever is not cut off, then each cradle that is, in the order of the arms. */
    List<Relief> pieces() {
        if (jig.cut().isEmpty()) {
            return List.of(whole());
        }
        Jig.Cut cut = jig.cut().orElseThrow();
        List<Relief> pieces = new ArrayList<>();
        Geometry middle = Axis.towards(0).disc(3 * jig.reachMm(), 8);
        for (Arm arm : jig.arms()) {
            middle = middle.difference(beyond(arm, cut)).union(tongue(arm, cut, 0));
        }
        pieces.add(named(cut).only(middle));
        for (Arm arm : jig.arms()) {
            CradleShape along = new CradleShape(jig.turned(-arm.angleRad()), plate);
            pieces.add(along.whole().only(along.beyond(arm, cut).difference(along.tongue(arm, cut, JOINT))));
        }
        return pieces;
    }

    /** With marks on the middle too: its cradles lie elsewhere until they are put together. */
    private Relief named(Jig.Cut cut) {
        double side = Math.max(seat.outerMm(), jig.flat().map(this::tableMm).orElse(0.0));
        ArmPlan near = plan.cut(cut.atMm(), side);
        Relief relief = whole();
        for (Arm arm : jig.arms()) {
            relief = near.mark(relief, arm, base, 0);
        }
        relief = near.start(relief, jig.mark(), base, 0);
        boolean all = near.isNamed(jig.mark(), 0) && jig.arms().stream().allMatch(arm -> near.isMarked(arm, 0));
        return all || jig.flat().isPresent() ? relief : new WellMarks(plan, base, wellMm()).write(relief, jig.mark());
    }

    private double tableMm(Jig.Flat flat) {
        return flat.widthMm() / 2 + seat.clearanceMm();
    }

    private Geometry beyond(Arm arm, Jig.Cut cut) {
        double side = jig.footMm() + 1;
        return plan.ownBox(arm, cut.atMm(), jig.reachMm() + 1, side);
    }

    /** Wider at its end, so that it holds once it was let in from above; under the trough, so that walls stay whole. */
    private Polygon tongue(Arm arm, Jig.Cut cut, double more) {
        double neck = 0.5 * seat.innerMm() + more;
        double head = 0.8 * seat.innerMm() + more;
        double end = cut.atMm() + cut.tongueMm() + more;
        double start = cut.atMm() - 1;
        return plan.axis(arm).area(start, -neck, end, -head, end, head, start, neck);
    }

    private Relief whole() {
        Relief relief = plan.foot(base, wellMm());
        for (Arm arm : jig.arms()) {
            relief = jig.flat().isPresent() ? table(relief, arm) : stop(relief, arm);
            relief = seat.walls(relief, run(arm), area -> plan.own(arm, area));
        }
        for (Arm arm : jig.arms()) {
            relief = plan.mark(seat.trough(relief, run(arm)), arm, base, lettersFromMm(arm));
        }
        relief = jig.cut().isPresent() ? names(relief) : start(relief);
        return jig.flat().isPresent() ? bolts(relief) : centreHole(relief);
    }

    private Relief start(Relief below) {
        double from = lettersFromMm(jig.arms().get(0));
        return plan.start(below, jig.mark(), base, from);
    }

    /** On each cradle that is cut off, so that those of two jigs are not mixed. */
    private Relief names(Relief below) {
        Relief relief = below;
        for (Arm arm : jig.arms()) {
            relief = plan.name(relief, arm, jig.mark(), base, lettersFromMm(arm));
        }
        return relief;
    }

    private double lettersFromMm(Arm arm) {
        return Math.max(seatMm(arm), jig.cut().map(cut -> cut.atMm() + 2).orElse(0.0));
    }

    private Seat.Run run(Arm arm) {
        double fall = StrictMath.tan(arm.tiltRad());
        return new Seat.Run(plan.axis(arm), node + pivot() * fall, -fall, seatMm(arm), jig.reachMm());
    }

    /** Where a trough begins. */
    private double seatMm(Arm arm) {
        return jig.flat()
                .map(flat -> flat.bendMm() + TAPER * jig.strut().depthMm())
                .orElse(stopMm(arm));
    }

    /** The lowest line of a strut reaches furthest in. */
    private double stopMm(Arm arm) {
        return jig.endMm() * StrictMath.cos(arm.tiltRad()) - jig.strut().depthMm() / 2 * StrictMath.sin(arm.tiltRad());
    }

    private double stopInnerMm(Arm arm) {
        return Math.max(0, stopMm(arm) - 2 * seat.wallMm());
    }

    private double wellMm() {
        double inner = jig.arms().stream().mapToDouble(this::stopInnerMm).min().orElseThrow();
        return Math.max(CENTRE_HOLE / 2 + 1, inner);
    }

    private Relief stop(Relief below, Arm arm) {
        Seat.Run run = run(arm);
        double floor = run.heightMm() + run.rise() * stopMm(arm) - jig.strut().depthMm() / 2 * run.upright();
        Geometry block = plan.ownBox(arm, stopInnerMm(arm), stopMm(arm), seat.outerMm());
        return below.cover(
                block, Plane.level(floor + Math.min(0.35 * jig.strut().depthMm(), HIGHEST_STOP)));
    }

    private Relief table(Relief below, Arm arm) {
        Jig.Flat flat = jig.flat().orElseThrow();
        double half = tableMm(flat);
        Seat.Run run = run(arm);
        return below.cover(
                        plan.ownBox(arm, flat.bendMm(), run.fromMm(), half),
                        run.along(-jig.strut().depthMm() / 2 - 0.5, 0))
                .cover(plan.ownBox(arm, 0, flat.bendMm(), half), Plane.level(node - flat.halfThickMm()));
    }

    private Relief bolts(Relief below) {
        Jig.Flat flat = jig.flat().orElseThrow();
        double radius = flat.boltMm() / 2 + 0.2;
        if (flat.boltCircleMm() <= 0) {
            return below.open(plan.middle().disc(radius, 24));
        }
        Relief relief = below;
        for (Arm arm : jig.arms()) {
            relief = relief.open(plan.axis(arm).moved(flat.boltCircleMm(), 0).disc(radius, 24));
        }
        return relief;
    }

    private Relief centreHole(Relief below) {
        return below.open(plan.middle().disc(CENTRE_HOLE / 2, 24));
    }
}
