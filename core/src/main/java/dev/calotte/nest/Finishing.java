package dev.calotte.nest;

import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.stock.Stock;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.util.FastMath;

/** What was found as spots in fields, told as parts on sheets and lengths of roll, with what is left of each. */
final class Finishing {

    private final Kinds kinds;
    private final List<Stock> stocks;
    private final Charges charges;
    private final double spacing;

    Finishing(Kinds kinds, List<Stock> stocks, double spacing) {
        this.kinds = kinds;
        this.stocks = stocks;
        this.charges = new Charges(kinds, stocks);
        this.spacing = spacing;
    }

    CutPlan plan(List<Filled> all, Goal goal) {
        return new CutPlan(all.stream().map(this::sheet).toList(), goal);
    }

    private CutSheet sheet(Filled filled) {
        Field field = filled.field();
        double length = field.isRoll() ? charges.takenMm(filled) : field.length() + 2 * field.margin();
        List<Placed> placed = new ArrayList<>();
        for (Spot spot : filled.spots()) {
            placed.add(placed(spot.moved(field.margin(), field.margin())));
        }
        List<ConvexPolygon> outlines = placed.stream().map(Placed::outline).toList();
        List<Offcut> offcuts = new Offcuts(field, length, spacing).of(outlines, narrowest());
        return new CutSheet(stocks.get(field.stock()), length, field.width() + 2 * field.margin(), placed, offcuts);
    }

    /** What is narrower than every part is waste. */
    private double narrowest() {
        double least = Double.POSITIVE_INFINITY;
        for (int kind = 0; kind < kinds.count(); kind++) {
            least = Math.min(least, kinds.shape(kind, false).narrowestWidth());
        }
        return least;
    }

    private Placed placed(Spot spot) {
        double round = 2 * FastMath.PI;
        double turn = spot.turnRad() - Math.floor(spot.turnRad() / round) * round;
        String mark = kinds.piece(spot.kind()).mark();
        return new Placed(mark, spot.x(), spot.y(), turn < round ? turn : 0, spot.mirrored(), kinds.outline(spot));
    }
}
