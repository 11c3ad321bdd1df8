package dev.calotte.cli.brief;

import dev.calotte.choose.Supply;
import dev.calotte.dome.Size;

/** By what a brief wants its dome sized. */
public sealed interface SizeWish {

    /**
     * By one of its measures.
     *
     * @param size the measure
     */
    record Given(Size size) implements SizeWish {}

    /**
     * By the longest strut as it is cut.
     *
     * @param mm how long it is, in millimetres
     */
    record LongestCut(double mm) implements SizeWish {}

    /**
     * By a cover: every panel of it in one piece.
     *
     * @param cover the name of the cover
     */
    record WidestFor(String cover) implements SizeWish {}

    /**
     * By how much there is of the stock of a cover.
     *
     * @param cover the name of the cover
     * @param supply how much of its stock there is
     */
    record WidestFrom(String cover, Supply supply) implements SizeWish {}

    /**
     * The size as far as it is known from the brief alone.
     *
     * @return the size given; a metre of radius as a stopgap where dome, frame or covers decide
     */
    default Size known() {
        return this instanceof Given given ? given.size() : Size.radius(1000);
    }
}
