package dev.calotte.svg.read;

import java.io.IOException;
import java.util.Locale;

/** Numbers and letters one after the other in an attribute, by the grammar of path data (SVG 1.1, section 8.3.9). */
final class Scanner {

    private static final double FARTHEST = 1e9;
    private static final int LONGEST = 40;

    private final Elements elements;
    private final String text;
    private int at;

    Scanner(Elements elements, String text) {
        this.elements = elements;
        this.text = text;
        space();
    }

    private char here() {
        return at < text.length() ? text.charAt(at) : '\0';
    }

    private void space() {
        while (at < text.length() && " \t\n\r\f".indexOf(here()) >= 0) {
            at++;
        }
    }

    /** Passes over the space, and one comma, between two numbers. */
    private void separator() {
        space();
        if (here() == ',') {
            at++;
            space();
        }
    }

    boolean isAtEnd() {
        return at == text.length();
    }

    /** Whether a letter stands here. */
    boolean isAtLetter() {
        char c = here();
        return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
    }

    char letter() throws IOException {
        if (!isAtLetter()) {
            throw wrong("a command");
        }
        char letter = text.charAt(at++);
        space();
        return letter;
    }

    /** One of the digits 0 and 1, which need no space after them. */
    boolean flag() throws IOException {
        char c = here();
        if (c != '0' && c != '1') {
            throw wrong("0 or 1");
        }
        at++;
        separator();
        return c == '1';
    }

    double number() throws IOException {
        int begin = at;
        sign();
        int digits = digits();
        if (here() == '.') {
            at++;
            digits += digits();
        }
        if (digits > 0 && (here() == 'e' || here() == 'E') && exponentFollows()) {
            at++;
            sign();
            digits();
        }
        if (digits == 0) {
            at = begin;
            throw wrong("a number");
        }
        String number = text.substring(begin, at);
        double value = number.length() <= LONGEST ? Double.parseDouble(number) : Double.NaN;
        if (!(Math.abs(value) <= FARTHEST)) {
            throw elements.wrong("a number is too long or too large");
        }
        separator();
        return value;
    }

    private boolean exponentFollows() {
        int next = at + 1;
        if (next < text.length() && "+-".indexOf(text.charAt(next)) >= 0) {
            next++;
        }
        return next < text.length() && isDigit(text.charAt(next));
    }

    private void sign() {
        if (here() == '+' || here() == '-') {
            at++;
        }
    }

    private int digits() {
        int begin = at;
        while (isDigit(here())) {
            at++;
        }
        return at - begin;
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    void end() throws IOException {
        if (!isAtEnd()) {
            throw wrong("the end");
        }
    }

    private SvgFormatException wrong(String expected) {
        String found = isAtEnd() ? "the end" : String.format(Locale.ROOT, "U+%04X", (int) here());
        return elements.wrong(expected + " should stand at place " + (at + 1) + " of a list of numbers, not " + found);
    }
}
