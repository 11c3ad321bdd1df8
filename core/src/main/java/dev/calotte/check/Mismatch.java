package dev.calotte.check;

/**
 * The largest distance between two things that should meet.
 *
 * @param mm how far apart they are
 * @param where which they are, empty if nothing was compared
 */
public record Mismatch(double mm, String where) {

    /** Nothing compared yet. */
    public static final Mismatch NONE = new Mismatch(0, "");

    /**
     * The larger of two.
     *
     * @param other another
     * @return this unless the other is larger, or this is of nothing
     */
    public Mismatch or(Mismatch other) {
        return where.isEmpty() || other.mm > mm ? other : this;
    }
}
