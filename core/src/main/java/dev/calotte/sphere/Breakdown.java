package dev.calotte.sphere;

/**
 * How a face of the solid is divided: from one corner of the solid to the next one goes b steps straight on over small
 * triangles, turns left by 60° seen from outside, and goes c steps.
 *
 * <p>{@code c = 0} is class I, {@code b = c} class II, anything else class III, of which {@code [c, b]} is the mirror
 * image of {@code [b, c]}.
 *
 * @param b steps straight on, 0 or more
 * @param c steps after the turn, 0 or more; b and c are not both 0
 */
public record Breakdown(int b, int c) {

    /**
     * Checks that the steps lead somewhere.
     *
     * @param b steps straight on
     * @param c steps after the turn
     * @throws IllegalArgumentException if a number is negative or both are 0
     */
    public Breakdown {
        if (b < 0 || c < 0 || b + c == 0) {
            throw new IllegalArgumentException("no breakdown is [" + b + ", " + c + "]");
        }
    }

    /**
     * The class I breakdown that divides every edge of the solid into n parts.
     *
     * @param n the frequency, at least 1
     * @return the breakdown [n, 0]
     */
    public static Breakdown of(int n) {
        return new Breakdown(n, 0);
    }

    /**
     * The frequency, which the trade writes as a number before a V.
     *
     * @return b + c
     */
    public int frequency() {
        return b + c;
    }

    /**
     * The triangulation number T: how many small triangles there are for each face of the solid.
     *
     * @return b² + bc + c²
     */
    public long triangulationNumber() {
        return (long) b * b + (long) b * c + (long) c * c;
    }

    /**
     * The class of the breakdown.
     *
     * @return 1, 2 or 3
     */
    public int classNumber() {
        if (b == 0 || c == 0) {
            return 1;
        }
        return b == c ? 2 : 3;
    }

    /**
     * The breakdown as the brief writes it.
     *
     * @return {@code [b, c]}
     */
    @Override
    public String toString() {
        return "[" + b + ", " + c + "]";
    }
}
