package dev.calotte.nest;

import dev.calotte.stock.Bar;
import java.util.List;

/** What a bar costs: its price if all have one, else its length, or one where all are as long. */
final class BarPrices {

    private BarPrices() {}

    static Measure measure(List<Bar> bars) {
        if (bars.stream().allMatch(bar -> bar.terms().price().isPresent())) {
            return Measure.PRICE;
        }
        boolean alike =
                bars.stream().allMatch(bar -> bar.lengthMm() == bars.get(0).lengthMm());
        return alike ? Measure.PIECES : Measure.LENGTH_MM;
    }

    static double cost(List<Bar> bars, int bar) {
        return switch (measure(bars)) {
            case PRICE -> bars.get(bar).terms().price().orElseThrow();
            case PIECES -> 1;
            case LENGTH_MM, AREA_MM2 -> bars.get(bar).lengthMm();
        };
    }
}
