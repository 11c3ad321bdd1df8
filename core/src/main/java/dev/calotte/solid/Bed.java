package dev.calotte.solid;

/**
 * The room of a printer.
 *
 * @param lengthMm along x
 * @param widthMm along y
 * @param heightMm upwards
 */
public record Bed(double lengthMm, double widthMm, double heightMm) {

    /** Common among desktop printers; common practice, no source. */
    public static final Bed USUAL = new Bed(220, 220, 250);

    /** What stays free at every edge, for skirts and clips. */
    public static final double MARGIN_MM = 5;

    /**
     * Whether something fits, without being turned.
     *
     * @param alongX how long it is
     * @param alongY how wide it is
     * @return whether the margins stay free
     */
    public boolean takes(double alongX, double alongY) {
        return alongX <= lengthMm - 2 * MARGIN_MM && alongY <= widthMm - 2 * MARGIN_MM;
    }
}
