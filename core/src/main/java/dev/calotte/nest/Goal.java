package dev.calotte.nest;

/**
 * How good a plan is, and how good any plan can be at most.
 *
 * @param measure what is spent
 * @param reached how much the plan spends
 * @param bound what every plan spends at least; never above {@code reached}
 * @param proof what shows that no plan spends less than the bound
 */
public record Goal(Measure measure, double reached, double bound, Proof proof) {

    /** Differences below this part of the value are rounding. */
    private static final double ROUNDING = 1e-9;

    /** What shows that a bound holds. */
    public enum Proof {
        /** The parts, with the gaps that they need round them, cover so much. */
        AREA,
        /** The linear programme over all patterns that there are, rounded up where the measure is a whole number. */
        LINEAR_PROGRAMME,
        /** The integer programme over all patterns that are not known to be impossible. */
        ALL_PATTERNS
    }

    /**
     * Puts the bound right where rounding lifted it above what is reached.
     *
     * @param measure what is spent
     * @param reached how much the plan spends
     * @param bound what every plan spends at least
     * @param proof what shows it
     */
    public Goal {
        bound = Math.min(bound, reached);
    }

    /**
     * Whether no plan spends less.
     *
     * @return true if the bound is reached
     */
    public boolean proven() {
        return gap() <= ROUNDING;
    }

    /**
     * What could be saved at most.
     *
     * @return the distance of the bound from what is reached, as a part of what is reached
     */
    public double gap() {
        return reached > 0 ? (reached - bound) / reached : 0;
    }
}
