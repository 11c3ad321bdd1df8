package dev.calotte.export;

/** The paper of a home printer, upright. */
public enum PageSize {
    /** 210 by 297 mm, ISO 216. */
    A4(210, 297),
    /** 8 1/2 by 11 inches, ANSI/ASME Y14.1 size A. */
    LETTER(215.9, 279.4);

    private final double widthMm;
    private final double heightMm;

    PageSize(double widthMm, double heightMm) {
        this.widthMm = widthMm;
        this.heightMm = heightMm;
    }

    /**
     * The shorter side.
     *
     * @return millimetres
     */
    public double widthMm() {
        return widthMm;
    }

    /**
     * The longer side.
     *
     * @return millimetres
     */
    public double heightMm() {
        return heightMm;
    }
}
