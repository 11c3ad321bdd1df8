package dev.calotte.stl.body;

import dev.calotte.document.Jig.Arm;

/**
 * Marks on the floor of the well in the middle of a hub's jig, for jigs whose arms are cut off so near that nothing fits
 * beside them: each strut's mark before its stop, an arrow to the first one, and the mark of the hub beside the hole.
 *
 * @param plan the arms
 * @param floorMm how high the floor lies
 * @param wellMm how far it reaches
 */
record WellMarks(ArmPlan plan, double floorMm, double wellMm) {

    private static final double LETTER = 7;
    private static final double GAP = 2;
    private static final double HOLE = 2;

    Relief write(Relief below, String hub) {
        Letters letters = new Letters(LETTER, Plane.level(floorMm + Letters.RAISED));
        double half = letters.widthMm(hub) / 2;
        double down = HOLE + GAP + LETTER;
        double row = wellMm - GAP - LETTER;
        if (StrictMath.hypot(half, down) > row - 2 * GAP - LETTER) {
            return below;
        }
        Relief relief = letters.write(below, hub, plan.middle().moved(-half, -down));
        for (Arm arm : plan.arms()) {
            Axis line = plan.axis(arm).moved(row, letters.widthMm(arm.mark()) / 2);
            relief = letters.write(relief, arm.mark(), line.turned(-Math.PI / 2));
        }
        Axis arrow = plan.axis(plan.arms().get(0)).moved(row - GAP - LETTER, 0);
        return relief.cover(arrow.area(0, -LETTER / 2, LETTER, 0, 0, LETTER / 2), letters.top());
    }
}
