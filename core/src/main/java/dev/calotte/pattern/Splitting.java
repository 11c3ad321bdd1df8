package dev.calotte.pattern;

/** Whether panels may be divided by seams. */
public enum Splitting {
    /** Every panel is one piece. */
    NEVER,
    /** A panel that does not fit the stock is divided. */
    SEAM,
    /** Panels are divided also where that uses less stock. */
    WHEN_IT_SAVES
}
