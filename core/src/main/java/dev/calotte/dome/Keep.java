package dev.calotte.dome;

/** What part of the sphere stays. */
public sealed interface Keep {

    /** The whole sphere. */
    record Whole() implements Keep {

        /**
         * The word that the brief writes.
         *
         * @return {@code whole}
         */
        @Override
        public String toString() {
            return "whole";
        }
    }

    /**
     * The upper rows of panels, as a fraction of all rows. Rows exist for class I with a corner of the solid up.
     *
     * @param kept the numerator, at least 1
     * @param of the denominator, at least the numerator
     */
    record Rows(int kept, int of) implements Keep {

        /**
         * Checks the fraction.
         *
         * @param kept the numerator
         * @param of the denominator
         * @throws IllegalArgumentException unless 1 &lt;= kept &lt;= of
         */
        public Rows {
            if (kept < 1 || kept > of) {
                throw new IllegalArgumentException("no fraction of the rows is " + kept + "/" + of);
            }
        }

        /**
         * The fraction as the brief writes it.
         *
         * @return for example {@code 5/9}
         */
        @Override
        public String toString() {
            return kept + "/" + of;
        }
    }

    /**
     * The panels that lie wholly above a height.
     *
     * @param heightMm millimetres over the centre of the sphere, below 0 for more than a half
     */
    record AboveHeight(double heightMm) implements Keep {}
}
