package dev.calotte.stock;

/** Something that parts are cut from. Lengths are millimetres. */
public sealed interface Stock permits Bar, Sheet, Roll, Outline {

    /**
     * What is known of its price, its mass and how much of it there is.
     *
     * @return the terms
     */
    Terms terms();
}
