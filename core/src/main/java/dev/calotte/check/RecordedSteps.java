package dev.calotte.check;

import java.util.List;

/**
 * What a record says of sizes that take less of a stock, or no more.
 *
 * @param place where in the record it stands
 * @param by the measure of the sizes
 * @param measure pieces, length, price or area
 * @param smaller smaller sizes, the largest first
 * @param larger larger ones
 */
public record RecordedSteps(String place, String by, String measure, List<Step> smaller, List<Step> larger) {

    /**
     * Copies the lists.
     *
     * @param place where in the record it stands
     * @param by the measure of the sizes
     * @param measure pieces, length, price or area
     * @param smaller smaller sizes
     * @param larger larger ones
     */
    public RecordedSteps {
        smaller = List.copyOf(smaller);
        larger = List.copyOf(larger);
    }

    /**
     * A size.
     *
     * @param size in the measure of the sizes
     * @param spent what it takes
     * @param saves how much less that is
     * @param yields of which kinds of struts more come out of one bar
     */
    public record Step(double size, double spent, double saves, List<String> yields) {

        /**
         * Copies the list.
         *
         * @param size in the measure of the sizes
         * @param spent what it takes
         * @param saves how much less that is
         * @param yields of which kinds more come out of one bar
         */
        public Step {
            yields = List.copyOf(yields);
        }
    }

    /**
     * The dome as it is.
     *
     * @param size in the measure of the sizes; not a number if it is not known
     * @param spent what it takes in the measure of the steps; not a number if it is not known
     * @param kinds the marks of all that is cut
     */
    public record Own(double size, double spent, List<String> kinds) {

        /**
         * Copies the list.
         *
         * @param size in the measure of the sizes
         * @param spent what it takes
         * @param kinds the marks of all that is cut
         */
        public Own {
            kinds = List.copyOf(kinds);
        }
    }
}
