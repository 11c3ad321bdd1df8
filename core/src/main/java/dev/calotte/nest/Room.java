package dev.calotte.nest;

import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.geometry.RectangleFit;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.apache.commons.math3.util.FastMath;

/** Whether parts can lie on a stock at all. */
final class Room {

    /** What is so much too large touches the edges: far below what any tool can hold, far above rounding. */
    static final double TOUCHING_MM = 1e-6;

    /** A turn that is known only up to rounding may make a part larger by this. */
    private static final double TURNING_MM = 1e-7;

    private static final String WHERE = "covers.stock";
    private static final Vector2D RIGHT = new Vector2D(1, 0);
    private static final Vector2D UP = new Vector2D(0, 1);

    private Room() {}

    /** How much longer and wider the field must be for a part to lie on it; 0 or below if it can. */
    static double lackingMm(Kinds kinds, int kind, Field field) {
        ConvexPolygon shape = kinds.shape(kind, false);
        if (kinds.isFree(kind)) {
            return Double.isInfinite(field.length())
                    ? shape.narrowestWidth() - field.width()
                    : RectangleFit.shortfall(shape, field.length(), field.width());
        }
        double least = Double.POSITIVE_INFINITY;
        for (Stand stand : kinds.stands(kind)) {
            ConvexPolygon laid = kinds.outline(kind, stand, 0, 0);
            double lacking = Math.max(laid.extent(RIGHT) - field.length(), laid.extent(UP) - field.width());
            least = Math.min(least, lacking);
        }
        return least;
    }

    /**
     * How far a part that touches both edges reaches beyond each of them, if it lies midway; 0 if there is room for it,
     * infinite if there is none.
     */
    static double beyondMm(double size, double room) {
        double lacking = size - room;
        return lacking > TOUCHING_MM + TURNING_MM ? Double.POSITIVE_INFINITY : Math.max(0, lacking / 2);
    }

    /** Whether a part turned so lies on the field, and be it that it touches. */
    static boolean holds(Field field, ConvexPolygon laid) {
        return Double.isFinite(beyondMm(laid.extent(RIGHT), field.length()) + beyondMm(laid.extent(UP), field.width()));
    }

    /** Ways to lay a part that may be turned at will so that the field holds it best. */
    static List<Stand> askew(Kinds kinds, int kind, Field field) {
        double length = Math.min(field.length(), 2 * kinds.widest());
        List<Stand> stands = new ArrayList<>();
        for (boolean mirrored : kinds.mirrors(kind) ? new boolean[] {false, true} : new boolean[] {false}) {
            double turn = RectangleFit.bestTurn(kinds.shape(kind, mirrored), length, field.width());
            stands.add(new Stand(mirrored, turn));
            stands.add(new Stand(mirrored, turn + FastMath.PI));
        }
        return stands;
    }

    /** Names every kind that fits on none of the fields. */
    static void check(Kinds kinds, List<Field> fields) {
        List<Problem> problems = new ArrayList<>();
        for (int kind = 0; kind < kinds.count(); kind++) {
            double least = Double.POSITIVE_INFINITY;
            for (Field field : fields) {
                least = Math.min(least, lackingMm(kinds, kind, field));
            }
            if (least > TOUCHING_MM) {
                problems.add(tooLarge(kinds.piece(kind), least));
            }
        }
        if (!problems.isEmpty()) {
            throw new CalotteException(problems);
        }
    }

    private static Problem tooLarge(Piece piece, double lackingMm) {
        String missing =
                new BigDecimal(lackingMm).setScale(1, RoundingMode.CEILING).toPlainString() + " mm";
        String turn = piece.grainRad().isPresent() ? "let the grain run freely, " : "";
        return new Problem(
                Problem.Code.IMPOSSIBLE,
                WHERE,
                "part " + piece.mark() + " is " + missing + " too large for every sheet and roll.",
                "Use stock that much longer and wider, " + turn + "or divide the dome more finely.");
    }

    static CalotteException tooLittle(Kinds kinds) {
        return new CalotteException(
                Problem.Code.IMPOSSIBLE,
                WHERE + ".have",
                "the sheets and rolls at hand do not hold all " + kinds.parts() + " parts.",
                "Raise their number, or list a stock without a limit.");
    }
}
