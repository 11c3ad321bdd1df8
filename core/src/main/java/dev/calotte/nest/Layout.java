package dev.calotte.nest;

/**
 * How parts are laid.
 *
 * @param spacingMm how far parts stay from each other at least: the cutter and the web between two cuts
 * @param steps how much work may be spent on a better plan: each step is one descent of up to ten triangles, or
 *     fewer parts of more corners, to where they lie less on each other, some 50 microseconds. Whatever else takes time
 *     counts as so many steps. With one step or more, up to a thousand are spent on patterns of sheets that hold few
 *     parts. The plan for a number of steps is always the same
 * @param threads how many threads share the work; they change nothing but the time it takes
 */
public record Layout(double spacingMm, int steps, int threads) {

    /** Steps for everyday work: about a second. */
    public static final int QUICK = 2000;

    /**
     * Checks the numbers.
     *
     * @param spacingMm 0 or more
     * @param steps 0 or more; with none the first plan stays
     * @param threads 1 or more
     * @throws IllegalArgumentException if one of them is less, or not finite
     */
    public Layout {
        if (!(spacingMm >= 0 && Double.isFinite(spacingMm) && steps >= 0 && threads > 0)) {
            throw new IllegalArgumentException(
                    "no layout has a spacing of " + spacingMm + " with " + steps + " steps on " + threads + " threads");
        }
    }

    Layout withSteps(int fewer) {
        return new Layout(spacingMm, fewer, threads);
    }

    /**
     * A layout for everyday work.
     *
     * @param spacingMm how far parts stay from each other at least
     * @return with {@link #QUICK} steps on two threads
     */
    public static Layout quick(double spacingMm) {
        return new Layout(spacingMm, QUICK, 2);
    }
}
