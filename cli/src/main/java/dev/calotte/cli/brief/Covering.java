package dev.calotte.cli.brief;

import dev.calotte.caution.Material;
import dev.calotte.pattern.Cover;
import dev.calotte.stock.Stock;
import java.util.List;
import java.util.Optional;

/**
 * A cover and what it is cut from.
 *
 * @param cover how its pieces are cut
 * @param stocks sheets and rolls, the first named first; none if the brief does not say
 * @param spacingMm how far its pieces stay apart on the stock
 * @param material what it is made of, if the brief says so
 * @param byPatches whether it is cut patch by patch, in the order in which patches are joined
 */
public record Covering(
        Cover cover, List<Stock> stocks, double spacingMm, Optional<Material> material, boolean byPatches) {

    /**
     * Copies the list.
     *
     * @param cover how its pieces are cut
     * @param stocks sheets and rolls
     * @param spacingMm how far its pieces stay apart
     * @param material what it is made of
     * @param byPatches whether it is cut patch by patch
     */
    public Covering {
        stocks = List.copyOf(stocks);
    }
}
