package dev.calotte.compare;

import dev.calotte.pattern.Cover;
import dev.calotte.stock.Stock;
import java.util.List;

/**
 * A cover that every dome of a comparison gets.
 *
 * @param cover how its pieces are cut
 * @param stocks what it is cut from; none if that is not known
 * @param spacingMm how far its pieces stay apart on the stock
 */
public record Cladding(Cover cover, List<Stock> stocks, double spacingMm) {

    /**
     * Copies the list.
     *
     * @param cover how its pieces are cut
     * @param stocks what it is cut from
     * @param spacingMm how far its pieces stay apart
     */
    public Cladding {
        stocks = List.copyOf(stocks);
    }
}
