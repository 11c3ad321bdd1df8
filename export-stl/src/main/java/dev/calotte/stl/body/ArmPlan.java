package dev.calotte.stl.body;

import dev.calotte.document.Jig.Arm;
import java.util.List;
import java.util.function.DoublePredicate;
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
    /** Between a text and its arrow. */
    private static final double GAP = 2;

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
        double letter = letterMm(arm.mark(), arm.leftRad(), fromMm);
        if (letter == 0) {
            return below;
        }
        double out = reachMm - MARGIN - letters(letter, heightMm).widthMm(arm.mark());
        return letters(letter, heightMm).write(below, arm.mark(), axis(arm).moved(out, sideMm + MARGIN));
    }

    /** Letters to the right of an arm, as near its end as they can stand; none where there is no room. */
    Relief name(Relief below, Arm arm, String text, double heightMm, double fromMm) {
        double letter = letterMm(text, arm.rightRad(), fromMm);
        if (letter == 0) {
            return below;
        }
        double out = reachMm - MARGIN - letters(letter, heightMm).widthMm(text);
        return letters(letter, heightMm).write(below, text, axis(arm).moved(out, -sideMm - MARGIN - letter));
    }

    /** To the right of the first arm: an arrow that points outwards, and a text before it if there is room for it. */
    Relief start(Relief below, String text, double heightMm, double fromMm) {
        Arm arm = arms.get(0);
        double named = startLetterMm(text, fromMm);
        double letter = named > 0 ? named : SMALL_LETTER;
        if (roomMm(arm.rightRad(), letter, fromMm) < letter) {
            return below;
        }
        Axis line = axis(arm).moved(reachMm - MARGIN - letter, -sideMm - MARGIN - letter);
        Relief arrow = below.cover(
                line.area(0, 0, letter, letter / 2, 0, letter),
                letters(letter, heightMm).top());
        double back = -GAP - letters(letter, heightMm).widthMm(text);
        return named > 0 ? letters(letter, heightMm).write(arrow, text, line.moved(back, 0)) : arrow;
    }

    /** Whether the arrow beside the first arm has room for a text before it. */
    boolean isNamed(String text, double fromMm) {
        return startLetterMm(text, fromMm) > 0;
    }

    /** Whether an arm has room for its mark. */
    boolean isMarked(Arm arm, double fromMm) {
        return letterMm(arm.mark(), arm.leftRad(), fromMm) > 0;
    }

    /** A flap before the first arm with a text, and an arrow that points to the arm; walls come later. */
    Relief flap(Relief below, String text, double heightMm) {
        Arm arm = arms.get(0);
        Letters letters = letters(SMALL_LETTER, heightMm);
        double width = letters.widthMm(text);
        double half = SMALL_LETTER / 2 + 1.5;
        Axis line = axis(arm).turned(-arm.rightRad());
        double beside = (sideMm + half) / StrictMath.sin(arm.rightRad());
        double from = Math.max(beside, Math.min(reachMm, footMm / StrictMath.sin(arm.rightRad())));
        double end = from + width + GAP + SMALL_LETTER + 3;
        Axis arrow = line.moved(from + 1.5 + width + GAP, -SMALL_LETTER / 2);
        Relief flap = below.cover(line.box(0, end, -half, half), Plane.level(heightMm));
        return letters.write(flap, text, line.moved(from + 1.5, -SMALL_LETTER / 2))
                .cover(arrow.area(0, 0, SMALL_LETTER, 0, SMALL_LETTER / 2, SMALL_LETTER), letters.top());
    }

    private static Letters letters(double sizeMm, double heightMm) {
        return new Letters(sizeMm, Plane.level(heightMm + Letters.RAISED));
    }

    /** The largest letters that have room beside an arm; 0 for none. */
    private double letterMm(String text, double toNeighbourRad, double fromMm) {
        return largest(letter ->
                roomMm(toNeighbourRad, letter, fromMm) >= letters(letter, 0).widthMm(text));
    }

    private double startLetterMm(String text, double fromMm) {
        double right = arms.get(0).rightRad();
        return largest(
                letter -> roomMm(right, letter, fromMm) >= letters(letter, 0).widthMm(text) + letter + GAP);
    }

    private static double largest(DoublePredicate fits) {
        return fits.test(LETTER) ? LETTER : fits.test(SMALL_LETTER) ? SMALL_LETTER : 0;
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
