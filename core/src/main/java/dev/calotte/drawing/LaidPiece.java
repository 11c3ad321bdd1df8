package dev.calotte.drawing;

import dev.calotte.nest.Placed;
import dev.calotte.parts.PanelKind;
import java.util.Comparator;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * A piece on its stock.
 *
 * @param placed where it lies, under the mark of its pattern
 * @param kind the kind of its panel
 * @param mark its own mark
 */
record LaidPiece(Placed placed, PanelKind kind, String mark) {

    /** From left to right, and upwards where two begin alike. */
    static final Comparator<LaidPiece> ALONG = Comparator.comparingLong((LaidPiece piece) -> hundredths(piece.fromMm()))
            .thenComparingLong(piece -> hundredths(piece.placed.yMm()));

    double fromMm() {
        return placed.outline().corners().stream()
                .mapToDouble(Vector2D::getX)
                .min()
                .orElseThrow();
    }

    double toMm() {
        return placed.outline().corners().stream()
                .mapToDouble(Vector2D::getX)
                .max()
                .orElseThrow();
    }

    /** What is the same for pieces that can lie in each other's place: pattern, side, and where, to a hundredth. */
    String place() {
        return placed.mark() + (placed.mirrored() ? " down " : " up ") + hundredths(placed.xMm()) + " "
                + hundredths(placed.yMm()) + " " + StrictMath.round(1e6 * placed.turnRad());
    }

    private static long hundredths(double mm) {
        return StrictMath.round(100 * mm);
    }
}
