package dev.calotte.cli;

/** What the domes of a comparison have in common. */
enum Same {
    /** What the brief sizes its dome by. */
    BRIEF,
    /** The stock of a cover: each dome is as large as it allows. */
    STOCK,
    RADIUS,
    FLOOR_DIAMETER,
    FLOOR_AREA,
    HEIGHT,
    LONGEST_STRUT
}
