package dev.calotte.svg.paper;

/** The lines of a template, widths after ISO 128. */
public enum Pen {
    /** What is cut. */
    CUT(0.5, ""),
    /** What is drilled, marked or measured. */
    FINE(0.25, ""),
    /** What is folded or bent. */
    FOLD(0.25, "3 1.5"),
    /** What is only there to refer to, such as the net shape. */
    NET(0.25, "6 1.5 0.5 1.5"),
    /** Where a page is cut off to be joined. */
    TRIM(0.25, "1 1"),
    /** Where the edge of a neighbour comes to lie. */
    FAINT(0.13, "");

    private final double widthMm;
    private final String dashes;

    Pen(double widthMm, String dashes) {
        this.widthMm = widthMm;
        this.dashes = dashes;
    }

    /**
     * How wide the line is.
     *
     * @return millimetres
     */
    public double widthMm() {
        return widthMm;
    }

    /**
     * How the line is broken.
     *
     * @return lengths of dashes and gaps in millimetres, separated by spaces; empty for a whole line
     */
    public String dashes() {
        return dashes;
    }
}
