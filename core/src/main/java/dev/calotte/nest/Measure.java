package dev.calotte.nest;

/** What a plan spends as little of as it can. */
public enum Measure {
    /** Money: every stock has its price. */
    PRICE,
    /** The number of bars or sheets: there is only one size, and its price is not known. */
    PIECES,
    /** The length of the bars, or of what is taken from a roll, in millimetres. */
    LENGTH_MM,
    /** The area of the sheets and of what is taken from rolls, in square millimetres. */
    AREA_MM2
}
