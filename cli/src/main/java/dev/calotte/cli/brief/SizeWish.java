package dev.calotte.cli.brief;

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
     * The size as far as it is known from the brief alone.
     *
     * @return the size given; a metre of radius as a stopgap where dome, frame or covers decide
     */
    default Size known() {
        return this instanceof Given given ? given.size() : Size.radius(1000);
    }
}
