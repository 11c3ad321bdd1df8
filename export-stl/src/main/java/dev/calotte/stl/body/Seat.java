package dev.calotte.stl.body;

import dev.calotte.document.StrutSection;
import java.util.function.UnaryOperator;
import org.locationtech.jts.geom.Geometry;

/**
 * A trough that a strut is laid into from above, up to its middle.
 *
 * @param strut what lies in it
 * @param clearanceMm what is left free on either side
 * @param wallMm how thick its walls are
 * @param liftMm by how much the trough lies higher than the strut's axis asks: by the clearance, the strut rests on the
 *     bottom; by 0, the clearance is on all sides
 */
record Seat(StrutSection strut, double clearanceMm, double wallMm, double liftMm) {

    /** Of half a circle: chords of 7.5 degrees cut 0.2 % of the radius off, less than any clearance. */
    private static final int STRIPS = 24;

    private static final double HIGHEST_SIDE = 25;

    /**
     * Where a trough runs.
     *
     * @param axis its plan
     * @param heightMm the height of the strut's axis where the plan's begins
     * @param rise how it rises along the plan, below 0 for a fall
     * @param fromMm where it begins
     * @param toMm where it ends
     */
    record Run(Axis axis, double heightMm, double rise, double fromMm, double toMm) {

        /** By how much something square to the strut's axis is further away straight down. */
        double upright() {
            return Math.sqrt(1 + rise * rise);
        }

        Plane along(double aboveMm, double left) {
            return axis.slope(heightMm + aboveMm * upright(), rise, left * upright());
        }
    }

    double innerMm() {
        return strut.widthMm() / 2 + clearanceMm;
    }

    /** From the strut's axis to the bottom of the trough, with no lift. */
    double depthMm() {
        return strut.depthMm() / 2 + clearanceMm;
    }

    double outerMm() {
        return innerMm() + wallMm;
    }

    /** The block with the trough in it; what the trough needs is never clipped. */
    Relief walls(Relief below, Run run, UnaryOperator<Geometry> clip) {
        Geometry block = run.axis().box(run.fromMm(), run.toMm(), -outerMm(), outerMm());
        return below.cover(clip.apply(block), run.along(rimMm(), 0));
    }

    /** The rim over the strut's axis; deep struts are held at their lower part only. */
    private double rimMm() {
        double deepest = liftMm > 0 && !strut.round() ? HIGHEST_SIDE - strut.depthMm() / 2 : 0;
        return liftMm + Math.min(0, deepest);
    }

    Relief trough(Relief below, Run run) {
        if (!strut.round()) {
            return strip(below, run, new Bottom(-innerMm(), innerMm(), liftMm - clearanceMm - strut.depthMm() / 2, 0));
        }
        Relief relief = below;
        double radius = innerMm();
        for (int i = 0; i < STRIPS; i++) {
            double right = -radius * StrictMath.cos(Math.PI * i / STRIPS);
            double left = -radius * StrictMath.cos(Math.PI * (i + 1) / STRIPS);
            double rightDown = -radius * StrictMath.sin(Math.PI * i / STRIPS) + liftMm;
            double leftDown = -radius * StrictMath.sin(Math.PI * (i + 1) / STRIPS) + liftMm;
            double slope = (leftDown - rightDown) / (left - right);
            relief = strip(relief, run, new Bottom(right, left, rightDown - slope * right, slope));
        }
        return relief;
    }

    /** Part of the trough's bottom, square to the strut. */
    private record Bottom(double right, double left, double aboveAxis, double slope) {}

    private static Relief strip(Relief below, Run run, Bottom bottom) {
        return below.cover(
                run.axis().box(run.fromMm(), run.toMm(), bottom.right, bottom.left),
                run.along(bottom.aboveAxis, bottom.slope));
    }
}
