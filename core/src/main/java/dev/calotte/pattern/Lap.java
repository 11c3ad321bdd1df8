package dev.calotte.pattern;

/** Which of two neighbours lies over the other along the side that they share. */
public enum Lap {
    /** This panel is the upper one and lies over its neighbour, so that water runs off. */
    OVER,
    /** This panel is the lower one and lies under its neighbour. */
    UNDER,
    /** There is no neighbour. */
    NONE
}
