package dev.calotte.nest;

/**
 * A length to be cut from bars.
 *
 * @param mark what it is called
 * @param lengthMm how long the finished part is
 * @param count how many of them are needed
 */
public record Cut(String mark, double lengthMm, int count) {

    /**
     * Checks the numbers.
     *
     * @param mark what it is called
     * @param lengthMm above 0
     * @param count 1 or more
     * @throws IllegalArgumentException if there is nothing to cut
     */
    public Cut {
        if (!(lengthMm > 0 && Double.isFinite(lengthMm) && count > 0)) {
            throw new IllegalArgumentException("nobody cuts " + count + " parts of " + lengthMm + " mm: " + mark);
        }
    }
}
