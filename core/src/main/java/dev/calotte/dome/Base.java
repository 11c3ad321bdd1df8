package dev.calotte.dome;

/** Where the hubs of the base ring stand. */
public enum Base {
    /** Where the division of the solid puts them. */
    AS_IS,
    /** At one height, the mean of where they would stand: each slides along its meridian, and stays on the sphere. */
    LEVEL
}
