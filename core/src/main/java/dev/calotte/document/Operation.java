package dev.calotte.document;

/** What a tool does along a shape, in the order in which a piece is worked. */
public enum Operation {
    /** Mark the surface. */
    ENGRAVE,
    /** Cut into the material so that it folds. */
    SCORE,
    /** Make a round hole. */
    DRILL,
    /** Cut out an opening inside a part. */
    CUT_INNER,
    /** Cut out the part itself. */
    CUT_OUTER,
    /** Nothing: a line to measure by. */
    REF,
    /** Nothing: the border of the stock. */
    SHEET
}
