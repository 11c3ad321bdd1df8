package dev.calotte.pattern;

/** How the allowances of two sides meet at a corner of a pattern. */
public enum Corner {
    /** Both go on until they meet: a long point. */
    POINTED,
    /** Cut square to the corner's bisector, as far beyond the net corner as the wider of the two allowances. */
    BLUNT,
    /**
     * Each allowance ends where the panel's other side lies when the allowance is folded over, so that a folded hem or
     * a glued tab does not overlap its neighbour.
     */
    MIRRORED
}
