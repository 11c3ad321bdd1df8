package dev.calotte.stock;

/**
 * Something that parts are cut from. Lengths are millimetres.
 *
 * <pre>{@code
 * Stock board = new Sheet(2440, 1220, 10, Terms.OPEN);
 * Stock cloth = new Roll(1500, 10, OptionalDouble.of(50_000), Terms.OPEN);
 * }</pre>
 */
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
