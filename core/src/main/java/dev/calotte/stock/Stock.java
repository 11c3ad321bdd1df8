package dev.calotte.stock;

/** Something that parts are cut from. Lengths are millimetres. */
public sealed interface Stock permits Bar, Sheet, Roll, Outline {

    /**
     * What is known of its price, its mass and how much of it there is.
     *
     * @return the terms
     */
    Terms terms();

    /**
     * What nothing is cut from.
     *
     * @return the width left unused along every edge, and of a bar at both ends, in millimetres
     */
    double marginMm();
}
