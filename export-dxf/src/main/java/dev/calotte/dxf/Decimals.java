package dev.calotte.dxf;

import dev.calotte.units.TextBuffer;

/** Numbers as they stand in the file: at most six decimals, at least one; angles and bulges, which are multiplied, nine. */
final class Decimals {

    private static final int MOST = 6;
    private static final int FINE = 9;

    /** Numbers further apart than this are different after rounding. */
    private static final double APART = 2e-6;

    private Decimals() {}

    static void add(TextBuffer text, double value) {
        text.addNumber(value, MOST, 1);
    }

    static void addFine(TextBuffer text, double value) {
        text.addNumber(value, FINE, 1);
    }

    static String text(double value) {
        return new TextBuffer(0).addNumber(value, MOST, 1).toString();
    }

    /** Whether two numbers are the same in the file. */
    static boolean same(double one, double other) {
        return Math.abs(one - other) < APART && text(one).equals(text(other));
    }
}
