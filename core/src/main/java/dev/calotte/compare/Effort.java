package dev.calotte.compare;

/**
 * How much work a comparison may take.
 *
 * @param plans for how many domes pieces are laid on stock, 1 or more; what the others take is estimated
 * @param steps how much work is spent on each of these plans, see {@link dev.calotte.nest.Layout}
 * @param threads how many threads share the work; they change nothing but the time it takes
 */
public record Effort(int plans, int steps, int threads) {

    /**
     * Checks the numbers.
     *
     * @param plans 1 or more
     * @param steps 0 or more
     * @param threads 1 or more
     * @throws IllegalArgumentException if one of them is less
     */
    public Effort {
        if (plans < 1 || steps < 0 || threads < 1) {
            throw new IllegalArgumentException(
                    "no effort is " + plans + " plans of " + steps + " steps on " + threads + " threads");
        }
    }
}
