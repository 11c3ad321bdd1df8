package dev.calotte.compare;

import dev.calotte.dome.Size;

/** By what all domes of a comparison are sized. */
public sealed interface InCommon {

    /**
     * All have one measure in common.
     *
     * @param size the measure
     */
    record OfSize(Size size) implements InCommon {}

    /**
     * The longest strut of all, as it is cut, is equally long.
     *
     * @param mm how long it is, in millimetres
     */
    record LongestCut(double mm) implements InCommon {}

    /**
     * Each is as large as the stock of a cover allows with every panel in one piece.
     *
     * @param cover the name of the cover, which has a stock
     */
    record StockOf(String cover) implements InCommon {}
}
