package dev.calotte.stl.body;

import dev.calotte.document.Jig.Arm;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * The plan of what lies round a hub: an axis for each arm, and how much of the plan is its own.
 *
 * @param arms counter-clockwise, the first one marked
 * @param sideMm from an arm's axis to its sides
 * @param turnRad how far all of it is turned
 * @param reachMm from the middle to the ends of the arms
 * @param footMm from an arm's axis to the edges of its foot
 */
record ArmPlan(List<Arm> arms, double sideMm, double turnRad, double reachMm, double footMm) {

    private static final double LETTER = 7;
    private static final double SMALL_LETTER = 5;
    private static final double MARGIN = 3;

    ArmPlan {
        arms = List.copyOf(arms);
    }

    /** Cut off nearer to the middle, where the arms' sides may lie elsewhere. */
    ArmPlan cut(double atMm, double otherSideMm) {
        return new ArmPlan(arms, otherSideMm, turnRad, atMm, footMm);
    }

    Axis middle() {
        return Axis.towards(turnRad);
    }

    Axis axis(Arm arm) {
        return Axis.towards(arm.angleRad() + turnRad);
    }

    /** What of an area lies between the middles to the arm's neighbours. */
    Geometry own(Arm arm, Geometry area) {
        double far = 4 * reachMm;
        double[] turns = {-arm.rightRad(), -arm.rightRad() / 2, 0, arm.leftRad() / 2, arm.leftRad()};
        double[] corners = new double[2 * turns.length + 2];
        for (int i = 0; i < turns.length; i++) {
            corners[2 * i + 2] = far * StrictMath.cos(turns[i]);
            corners[2 * i + 3] = far * StrictMath.sin(turns[i]);
        }
        Polygon sector = axis(arm).area(corners);
        return sector.intersection(area);
    }

    /** A box along an arm, as far as it is the arm's own. */
    Geometry ownBox(Arm arm, double from, double to, double halfMm) {
        return own(arm, axis(arm).box(from, to, -halfMm, halfMm));
    }

    /** The foot that carries all of it, and a disc in its middle. */
    Relief foot(double heightMm, double discMm) {
        Relief relief = Relief.empty();
        for (Arm arm : arms) {
            relief = relief.cover(ownBox(arm, 0, reachMm, footMm), Plane.level(heightMm));
        }
        return relief.cover(middle().disc(discMm, 24), Plane.level(heightMm));
    }

    /** Letters on the foot, to the left of an arm as near its end as they can stand; none where there is no room. */
    Relief mark(Relief below, Arm arm, double heightMm, double fromMm) {
        double letter = roomMm(arm.leftRad(), LETTER, fromMm) > 0 ? LETTER : SMALL_LETTER;
        Letters letters = new Letters(letter, Plane.level(heightMm + Letters.RAISED));
        double width = letters.widthMm(arm.mark());
        if (roomMm(arm.leftRad(), letter, fromMm) < width) {
            return below;
        }
        return letters.write(below, arm.mark(), axis(arm).moved(reachMm - MARGIN - width, sideMm + MARGIN));
    }

    /** To the right of the first arm: a text, and an arrow that points outwards. */
    Relief start(Relief below, String text, double heightMm, double fromMm) {
        Arm arm = arms.get(0);
        double letter = roomMm(arm.rightRad(), LETTER, fromMm) > 2 * LETTER ? LETTER : SMALL_LETTER;
        Plane top = Plane.level(heightMm + Letters.RAISED);
        Letters letters = new Letters(letter, top);
        double width = letters.widthMm(text);
        double room = roomMm(arm.rightRad(), letter, fromMm);
        if (room < letter) {
            return below;
        }
        Axis line = axis(arm).moved(reachMm - MARGIN - letter, -sideMm - MARGIN - letter);
        Relief arrow = below.cover(line.area(0, 0, letter, letter / 2, 0, letter), top);
        return room < width + letter + 2 ? arrow : letters.write(arrow, text, line.moved(-2 - width, 0));
    }

    /** A flap between the first arm and its right neighbour, for a text that finds no room beside it; walls come later. */
    Relief flap(Relief below, String text, double heightMm, double fromMm) {
        Arm arm = arms.get(0);
        Letters letters = new Letters(SMALL_LETTER, Plane.level(heightMm + Letters.RAISED));
        double width = letters.widthMm(text);
        if (roomMm(arm.rightRad(), SMALL_LETTER, fromMm) >= width + SMALL_LETTER + 2) {
            return below;
        }
        double half = SMALL_LETTER / 2 + 1.5;
        Axis line = axis(arm).turned(-arm.rightRad());
        double beside = (sideMm + half) / StrictMath.sin(arm.rightRad());
        double from = Math.max(beside, Math.min(reachMm, footMm / StrictMath.sin(arm.rightRad())));
        Relief flap = below.cover(line.box(0, from + width + 3, -half, half), Plane.level(heightMm));
        return letters.write(flap, text, line.moved(from + 1.5, -SMALL_LETTER / 2));
    }

    /** What is free for letters beside an arm, along it. */
    private double roomMm(double toNeighbourRad, double letter, double fromMm) {
        double across = sideMm + MARGIN + 1 + letter;
        if (across > footMm) {
            return 0;
        }
        double from = toNeighbourRad < Math.PI / 2 ? across / StrictMath.tan(toNeighbourRad) : 0;
        return reachMm - MARGIN - Math.max(from, fromMm);
    }
}
