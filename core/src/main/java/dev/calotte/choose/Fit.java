package dev.calotte.choose;

import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.geometry.RectangleFit;
import dev.calotte.nest.OutlineRoom;
import dev.calotte.nest.Piece;
import dev.calotte.pattern.CutPiece;
import dev.calotte.stock.Bar;
import dev.calotte.stock.Outline;
import dev.calotte.stock.Roll;
import dev.calotte.stock.Sheet;
import dev.calotte.stock.Stock;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * Whether a piece can be cut from stock in one.
 *
 * @param overByMm how much larger the stock must be in both directions, a roll in its width, for the piece to fit; what
 *     is left over if it is below 0
 */
public record Fit(double overByMm) {

    /** Far below what any tool can hold, far above rounding. */
    private static final double TOUCHING_MM = 1e-6;

    /**
     * Lays a piece on stock: turned as need be, or with its grain along the stock.
     *
     * @param piece the piece
     * @param stock a sheet, a roll or an irregular outline
     * @return whether it fits; exact on sheets and rolls, see {@link OutlineRoom} for outlines
     * @throws IllegalArgumentException if the stock is a bar
     */
    public static Fit of(CutPiece piece, Stock stock) {
        ConvexPolygon blank = piece.blank();
        if (stock instanceof Sheet sheet) {
            return new Fit(over(blank, piece.grainRad(), sheet.usableLengthMm(), sheet.usableWidthMm()));
        }
        if (stock instanceof Roll roll) {
            double length = roll.lengthMm().orElse(Double.POSITIVE_INFINITY) - 2 * roll.marginMm();
            return new Fit(over(blank, piece.grainRad(), length, roll.usableWidthMm()));
        }
        if (stock instanceof Outline outline) {
            Piece one = new Piece(piece.mark(), blank, 1, false, piece.grainRad());
            return new Fit(OutlineRoom.overMm(one, outline));
        }
        throw new IllegalArgumentException("no panel is cut from " + Bar.class.cast(stock));
    }

    /**
     * Lays a piece on the stock that suits it best. Of irregular outlines there are only so many, so they count only
     * where there is nothing else.
     *
     * @param piece the piece
     * @param stocks sheets, rolls and outlines, at least one
     * @return the best of all
     */
    public static Fit of(CutPiece piece, Collection<Stock> stocks) {
        List<Stock> lasting = lasting(stocks);
        return (lasting.isEmpty() ? stocks : lasting)
                .stream()
                        .map(stock -> of(piece, stock))
                        .min(Comparator.comparingDouble(Fit::overByMm))
                        .orElseThrow();
    }

    /** The sheets and rolls among stocks. */
    static List<Stock> lasting(Collection<Stock> stocks) {
        return stocks.stream().filter(stock -> !(stock instanceof Outline)).toList();
    }

    private static double over(ConvexPolygon blank, OptionalDouble grainRad, double length, double width) {
        if (grainRad.isPresent()) {
            double cos = StrictMath.cos(grainRad.getAsDouble());
            double sin = StrictMath.sin(grainRad.getAsDouble());
            return Math.max(
                    blank.extent(new Vector2D(cos, sin)) - length, blank.extent(new Vector2D(-sin, cos)) - width);
        }
        return Double.isInfinite(length)
                ? blank.narrowestWidth() - width
                : RectangleFit.shortfall(blank, length, width);
    }

    /**
     * Whether the piece fits.
     *
     * @return true up to touching
     */
    public boolean fits() {
        return overByMm <= TOUCHING_MM;
    }
}
