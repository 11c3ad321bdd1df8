package dev.calotte.units;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * The one place where numbers become text for files: a point for the fraction, no exponent, no grouping, no negative
 * zero, the same in every locale. Rounds halves away from zero.
 *
 * <pre>{@code
 * String text = NumberText.fixed(1412.6, 1);
 * }</pre>
 */
public final class NumberText {

    /** The most digits after the point. */
    public static final int MOST_DECIMALS = 12;

    private static final long[] POWERS = powers();

    /** Below this, a scaled value is a whole number of a long without loss. */
    private static final double EXACT = 1L << 53;

    /** No double is further from its neighbours than this part of it, unless it is far below anything that is printed. */
    private static final double ROUNDING = 0x1p-52;

    private NumberText() {}

    private static long[] powers() {
        long[] powers = new long[MOST_DECIMALS + 1];
        powers[0] = 1;
        for (int i = 1; i < powers.length; i++) {
            powers[i] = 10 * powers[i - 1];
        }
        return powers;
    }

    /**
     * A number with all its digits after the point.
     *
     * @param value the number, finite
     * @param decimals how many digits after the point, from 1 to {@link #MOST_DECIMALS}
     * @return for example {@code 12.500}
     * @throws IllegalArgumentException if the number is not finite
     */
    public static String fixed(double value, int decimals) {
        StringBuilder text = new StringBuilder(24);
        appendFixed(text, value, decimals);
        return text.toString();
    }

    /**
     * A number without zeros at the end of its fraction.
     *
     * @param value the number, finite
     * @param decimals how many digits after the point at most, from 1 to {@link #MOST_DECIMALS}
     * @return for example {@code 12.5} or {@code 12}
     * @throws IllegalArgumentException if the number is not finite
     */
    public static String trimmed(double value, int decimals) {
        StringBuilder text = new StringBuilder(24);
        appendTrimmed(text, value, decimals);
        return text.toString();
    }

    /**
     * Appends what {@link #fixed} gives.
     *
     * @param text what to append to
     * @param value the number, finite
     * @param decimals how many digits after the point, from 1 to {@link #MOST_DECIMALS}
     * @throws IllegalArgumentException if the number is not finite
     */
    public static void appendFixed(StringBuilder text, double value, int decimals) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("no file can hold the number " + value);
        }
        double scaled = Math.abs(value) * POWERS[decimals];
        if (!isPlain(scaled)) {
            text.append(new BigDecimal(value)
                    .setScale(decimals, RoundingMode.HALF_UP)
                    .toPlainString());
            return;
        }
        long rounded = Math.round(scaled);
        if (value < 0 && rounded > 0) {
            text.append('-');
        }
        text.append(rounded / POWERS[decimals]).append('.');
        long fraction = rounded % POWERS[decimals];
        for (int place = decimals - 1; place >= 0; place--) {
            text.append((char) ('0' + fraction / POWERS[place] % 10));
        }
    }

    static long power(int decimals) {
        return POWERS[decimals];
    }

    /** Whether a value that was multiplied by a power of ten is rounded as its exact value is. */
    static boolean isPlain(double scaled) {
        return scaled < EXACT && !mayBeHalf(scaled);
    }

    /** Whether the product's own rounding could have carried it over the half between two whole numbers. */
    private static boolean mayBeHalf(double scaled) {
        return Math.abs(scaled - Math.floor(scaled) - 0.5) <= scaled * ROUNDING;
    }

    /** How many digits a number of at least 0 has. */
    static int digits(long number) {
        int count = 1;
        while (count < POWERS.length && number >= POWERS[count]) {
            count++;
        }
        return number < POWERS[POWERS.length - 1]
                ? count
                : Long.toString(number).length();
    }

    /**
     * Appends what {@link #trimmed} gives.
     *
     * @param text what to append to
     * @param value the number, finite
     * @param decimals how many digits after the point at most, from 1 to {@link #MOST_DECIMALS}
     * @throws IllegalArgumentException if the number is not finite
     */
    public static void appendTrimmed(StringBuilder text, double value, int decimals) {
        appendFixed(text, value, decimals);
        int end = text.length();
        while (text.charAt(end - 1) == '0') {
            end--;
        }
        text.setLength(text.charAt(end - 1) == '.' ? end - 1 : end);
    }
}
