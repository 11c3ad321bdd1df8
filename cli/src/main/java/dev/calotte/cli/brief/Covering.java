package dev.calotte.cli.brief;

import dev.calotte.pattern.Cover;
import dev.calotte.stock.Stock;
import java.util.List;

/**
 * A cover and what it is cut from.
 *
 * @param cover how its pieces are cut
 * @param stocks sheets and rolls, the first named first; none if the brief does not say
 */
public record Covering(Cover cover, List<Stock> stocks) {

    /**
     * Copies the list.
     *
     * @param cover how its pieces are cut
     * @param stocks sheets and rolls
     */
    public Covering {
        stocks = List.copyOf(stocks);
    }
}
