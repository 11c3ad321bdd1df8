package dev.calotte.dome;

import java.util.Locale;

/**
 * How large the dome is, by one of its measures.
 *
 * @param measure what is given
 * @param value how much of it, above 0: millimetres, for {@link Measure#FLOOR_AREA} square millimetres
 */
public record Size(Measure measure, double value) {

    /** The measures that a dome can be sized by. */
    public enum Measure {
        /** From the centre of the sphere to the hubs. */
        RADIUS,
        /** Twice the largest distance of a base hub from the axis. */
        FLOOR_DIAMETER,
        /** From the lowest hub to the highest. */
        HEIGHT,
        /** The area of the base ring seen from above. */
        FLOOR_AREA,
        /** The longest strut from node to node. */
        LONGEST_STRUT;

        /**
         * The key of the brief that gives it.
         *
         * @return for example {@code floor-diameter}
         */
        public String key() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /**
     * Checks the value.
     *
     * @param measure what is given
     * @param value how much of it
     * @throws IllegalArgumentException unless the value is finite and above 0
     */
    public Size {
        if (!(value > 0 && Double.isFinite(value))) {
            throw new IllegalArgumentException("no dome has a " + measure + " of " + value);
        }
    }

    /**
     * A size by the radius.
     *
     * @param mm the radius in millimetres, above 0
     * @return the size
     */
    public static Size radius(double mm) {
        return new Size(Measure.RADIUS, mm);
    }
}
