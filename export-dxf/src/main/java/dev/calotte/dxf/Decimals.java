package dev.calotte.dxf;

import dev.calotte.units.NumberText;

/** Numbers as they stand in the file: at most six decimals, at least one; angles and bulges, which are multiplied, nine. */
final class Decimals {

    private static final int MOST = 6;
    private static final int FINE = 9;

    /** Numbers further apart than this are different after rounding. */
    private static final double APART = 2e-6;

    private Decimals() {}

    static void append(StringBuilder text, double value) {
        append(text, value, MOST);
    }

    static void appendFine(StringBuilder text, double value) {
        append(text, value, FINE);
    }

    private static void append(StringBuilder text, double value, int decimals) {
        int start = text.length();
        NumberText.appendTrimmed(text, value, decimals);
        if (text.indexOf(".", start) < 0) {
            text.append(".0");
        }
    }

    static String text(double value) {
        StringBuilder text = new StringBuilder(24);
        append(text, value);
        return text.toString();
    }

    /** Whether two numbers are the same in the file. */
    static boolean same(double one, double other) {
        return Math.abs(one - other) < APART && text(one).equals(text(other));
    }
}
