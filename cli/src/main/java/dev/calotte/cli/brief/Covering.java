package dev.calotte.cli.brief;

import dev.calotte.pattern.Cover;
import dev.calotte.stock.Stock;
import java.util.List;

/**
 * A cover and what it is cut from.
 *
 * @param cover how its pieces are cut
 * @param stocks sheets and rolls, the first named first; none if the brief does not say
 * @param spacingMm how far its pieces stay apart on the stock
 */
public record Covering(Cover cover, List<Stock> stocks, double spacingMm) {

    /**
     * Copies the list.
     *
     * @param cover how its pieces are cut
     * @param stocks sheets and rolls
     * @param spacingMm how far its pieces stay apart
     */
    public Covering {
        stocks = List.copyOf(stocks);
    }
}
