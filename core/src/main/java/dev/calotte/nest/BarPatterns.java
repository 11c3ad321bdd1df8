package dev.calotte.nest;

import dev.calotte.stock.Bar;
import java.util.List;

/**
 * What can be cut from one bar. A pattern is whole if no further part that is needed would go on its bar: only such
 * patterns are worth having. They are listed longest parts first.
 */
final class BarPatterns {

    private final List<Bar> bars;
    private final BarLengths lengths;
    private final double[] need;
    private final int limit;
    private final Columns columns;
    private final int[] yield;
    private boolean complete = true;

    private BarPatterns(List<Bar> bars, BarLengths lengths, int limit) {
        this.bars = bars;
        this.lengths = lengths;
        this.need = lengths.need();
        this.limit = limit;
        this.columns = new Columns(lengths.count(), bars.size());
        this.yield = new int[lengths.count()];
    }

    /** Lists the whole patterns of all bars; stops at the limit. */
    static BarPatterns of(List<Bar> bars, BarLengths lengths, int limit) {
        BarPatterns patterns = new BarPatterns(bars, lengths, limit);
        for (int bar = 0; bar < bars.size(); bar++) {
            patterns.list(bar, 0, room(bars.get(bar)));
        }
        return patterns;
    }

    /** Each part takes its length and a kerf, and the last needs no kerf. */
    static double room(Bar bar) {
        return bar.usableLengthMm() + bar.kerfMm() + BarLengths.ROUNDING_MM;
    }

    private void list(int bar, int kind, double room) {
        if (kind == yield.length) {
            add(bar, room);
            return;
        }
        double size = size(bar, kind);
        for (int n = (int) Math.min(need[kind], Math.floor(room / size)); n >= 0 && complete; n--) {
            yield[kind] = n;
            list(bar, kind + 1, room - n * size);
        }
        yield[kind] = 0;
    }

    private double size(int bar, int kind) {
        return lengths.lengthMm(kind) + bars.get(bar).kerfMm();
    }

    private void add(int bar, double room) {
        for (int kind = 0; kind < yield.length; kind++) {
            if (yield[kind] < need[kind] && size(bar, kind) <= room) {
                return;
            }
        }
        if (columns.count() == limit) {
            complete = false;
        } else {
            columns.add(bar, yield.clone(), BarPrices.cost(bars, bar));
        }
    }

    /** Whether these are all there are. */
    boolean complete() {
        return complete;
    }

    Columns columns() {
        return columns;
    }
}
