package dev.calotte.solid;

import dev.calotte.document.Jig;
import dev.calotte.document.Jig.Arm;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem.Code;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Lays a jig on the bed: whole, turned by whole degrees until it fits, or with all its cradles cut off as far out as
 * the middle still fits.
 *
 * @param bed what the printer takes
 * @param whole the jig in one piece
 * @param outerMm from the axis of a trough to the outside of its walls
 * @param seatMm where the troughs that begin furthest out begin
 */
record CradleBed(Bed bed, Jig.Cradle whole, double outerMm, double seatMm) {

    private static final double LEAST_CUT_OFF_MM = 25;
    private static final double LEAST_LEFT_MM = 5;
    /** Half a turn and more is another turn on a bed with right angles. */
    private static final int TURNS = 180;

    Jig.Cradle laid() {
        checkHeight();
        OptionalDouble turn = turn(whole.reachMm(), 0);
        if (turn.isPresent()) {
            return whole.turned(turn.getAsDouble());
        }
        double tongue = Math.max(10, 0.8 * outerMm);
        double outermost = whole.reachMm() - Math.max(LEAST_CUT_OFF_MM, tongue + LEAST_LEFT_MM);
        for (double cut = outermost; cut >= seatMm + LEAST_LEFT_MM && armFits(cut); cut--) {
            OptionalDouble turned = turn(cut, tongue);
            if (turned.isPresent()) {
                return cut(new Jig.Cut(cut, tongue), turned.getAsDouble());
            }
        }
        throw tooLarge();
    }

    private Jig.Cradle cut(Jig.Cut cut, double turnRad) {
        return new Jig.Cradle(
                whole.mark(),
                whole.title(),
                whole.strut(),
                whole.arms(),
                whole.endMm(),
                whole.flat(),
                whole.reachMm(),
                whole.footMm(),
                Optional.of(cut),
                turnRad);
    }

    private boolean armFits(double cut) {
        return bed.takes(whole.reachMm() - cut, 2 * whole.footMm());
    }

    private OptionalDouble turn(double reach, double tongue) {
        for (int degrees = 0; degrees < TURNS; degrees++) {
            double turn = StrictMath.toRadians(degrees);
            if (fits(reach, tongue, turn)) {
                return OptionalDouble.of(turn);
            }
        }
        return OptionalDouble.empty();
    }

    private boolean fits(double reach, double tongue, double turn) {
        double[] box = {0, 0, 0, 0};
        for (Arm arm : whole.arms()) {
            for (int side = -1; side <= 1; side += 2) {
                widen(box, arm.angleRad() + turn, reach, side * whole.footMm());
                widen(box, arm.angleRad() + turn, reach + tongue, side * outerMm);
                widen(box, arm.angleRad() + turn, 0, side * whole.footMm());
            }
        }
        return bed.takes(box[1] - box[0], box[3] - box[2]);
    }

    private static void widen(double[] box, double angle, double out, double left) {
        double x = out * StrictMath.cos(angle) - left * StrictMath.sin(angle);
        double y = out * StrictMath.sin(angle) + left * StrictMath.cos(angle);
        box[0] = Math.min(box[0], x);
        box[1] = Math.max(box[1], x);
        box[2] = Math.min(box[2], y);
        box[3] = Math.max(box[3], y);
    }

    /** The highest place is where a trough begins nearest to the middle, or the table of flattened ends. */
    private void checkHeight() {
        double height = whole.arms().stream()
                .mapToDouble(arm -> whole.strut().depthMm() / StrictMath.cos(arm.tiltRad())
                        + whole.reachMm() * StrictMath.tan(arm.tiltRad()))
                .max()
                .orElseThrow();
        if (height + LEAST_LEFT_MM > bed.heightMm()) {
            throw new CalotteException(
                    Code.IMPOSSIBLE,
                    "jigs.bed",
                    String.format(Locale.ROOT, "the jig of hub %s would be %.0f mm high.", whole.mark(), height),
                    "Use a printer with more room, or thinner struts.");
        }
    }

    private CalotteException tooLarge() {
        return new CalotteException(
                Code.IMPOSSIBLE,
                "jigs.bed",
                String.format(
                        Locale.ROOT,
                        "the jig of hub %s is %.0f mm across and does not fit with its cradles cut off either.",
                        whole.mark(),
                        2 * whole.reachMm()),
                "Use a printer with more room, thinner struts or a smaller hub-gap.");
    }
}
