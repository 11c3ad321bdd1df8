package dev.calotte.assembly;

/** Ways of grouping panels into patches. */
public enum PatchWay {
    /** All panels round a hub, for hubs chosen so that stars do not overlap. */
    STARS,
    /** All panels of a row. */
    ROWS,
    /** All panels of a sector, of which the turns of the solid make the others. */
    SECTORS
}
