package dev.calotte.nest;

import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.stock.Outline;
import dev.calotte.stock.Stock;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.util.FastMath;

/** Tells where parts lie on their stock, margins included, and what is left of it. */
record Laying(Kinds kinds, List<Stock> stocks, Charges charges, double spacingMm) {

    List<CutSheet> sheets(List<Filled> all) {
        return all.stream().map(this::sheet).toList();
    }

    CutPlan plan(List<Filled> all, Goal goal) {
        return new CutPlan(sheets(all), goal);
    }

    private CutSheet sheet(Filled filled) {
        Field field = filled.field();
        Stock stock = stocks.get(field.stock());
        double length = field.isRoll() ? charges.takenMm(filled) : field.length() + 2 * field.margin();
        List<Placed> placed = new ArrayList<>();
        for (Spot spot : filled.spots()) {
            placed.add(placed(spot.moved(field.margin(), field.margin())));
        }
        List<ConvexPolygon> outlines = placed.stream().map(Placed::outline).toList();
        // what is left of an irregular outline is as irregular
        List<Offcut> offcuts =
                stock instanceof Outline ? List.of() : new Offcuts(field, length, spacingMm).of(outlines, narrowest());
        return new CutSheet(stock, length, field.width() + 2 * field.margin(), placed, offcuts);
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
