package dev.calotte.units;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * A short text of numbers and units, read from left to right in one pass. Numbers are kept as decimals, so that
 * 4.35 m is the millimetres that were meant and not the nearest binary fraction times a thousand.
 */
final class UnitText {

    static final int LONGEST = 64;

    private final String text;
    private final String example;
    private int at;

    /** Takes a text, in which all kinds of spaces and primes have become the plain ones. */
    UnitText(String raw, String example) {
        this.example = example;
        if (raw.length() > LONGEST) {
            throw new UnitException(
                    "a text of " + raw.length() + " characters is too long for a number with its unit.", example);
        }
        this.text = plain(raw).strip();
        if (text.chars().anyMatch(UnitText::hidden)) {
            throw new UnitException("the text holds characters that cannot be seen.", example);
        }
        if (text.indexOf(',') >= 0) {
            throw refuse("has a comma.", "Use a point, as in 3.2, and nothing between thousands.");
        }
    }

    private static String plain(String raw) {
        StringBuilder plain = new StringBuilder(raw.length());
        raw.chars().forEach(c -> plain.append(plain((char) c)));
        return plain.toString();
    }

    private static char plain(char c) {
        return switch (c) {
            case '\t', '\u00a0', '\u2009', '\u202f' -> ' ';
            case '\u2019', '\u2032' -> '\'';
            case '\u201d', '\u2033' -> '"';
            case '\u2212' -> '-';
            default -> c;
        };
    }

    private static boolean hidden(int c) {
        int type = Character.getType(c);
        return type == Character.CONTROL
                || type == Character.FORMAT
                || type == Character.SURROGATE
                || type == Character.LINE_SEPARATOR
                || type == Character.PARAGRAPH_SEPARATOR;
    }

    /** Says what is wrong with this text; the sentence begins with the text itself. */
    UnitException refuse(String predicate, String mend) {
        return new UnitException((text.isEmpty() ? "an empty text" : text) + " " + predicate, mend);
    }

    /** Says that this text is not what was wanted, and shows what is. */
    UnitException refuse(String predicate) {
        return refuse(predicate, example);
    }

    boolean done() {
        skipSpaces();
        return at == text.length();
    }

    boolean eat(char c) {
        boolean there = at < text.length() && text.charAt(at) == c;
        at += there ? 1 : 0;
        return there;
    }

    /** All that is left, inner spaces included. */
    String rest() {
        skipSpaces();
        String rest = text.substring(at);
        at = text.length();
        return rest;
    }

    /** A prime, or letters up to the next thing that is no letter; empty if there are none. */
    String unit() {
        skipSpaces();
        int from = at;
        if (!eat('\'') && !eat('"')) {
            while (at < text.length() && Character.isLetter(text.charAt(at))) {
                at++;
            }
        }
        return text.substring(from, at);
    }

    /** A number: {@code 3}, {@code 3.2}, {@code .5}, {@code 3/4} or {@code 3 1/4}. */
    BigDecimal number() {
        skipSpaces();
        String whole = digits();
        if (eat('.')) {
            String decimals = digits();
            check(!decimals.isEmpty());
            return new BigDecimal((whole.isEmpty() ? "0" : whole) + "." + decimals);
        }
        check(!whole.isEmpty());
        return eat('/') ? over(whole) : new BigDecimal(whole).add(fractionAhead());
    }

    private BigDecimal fractionAhead() {
        int before = at;
        skipSpaces();
        String numerator = digits();
        if (at > before && !numerator.isEmpty() && eat('/')) {
            BigDecimal fraction = over(numerator);
            check(fraction.compareTo(BigDecimal.ONE) < 0);
            return fraction;
        }
        at = before;
        return BigDecimal.ZERO;
    }

    private BigDecimal over(String numerator) {
        String denominator = digits();
        check(!denominator.isEmpty());
        BigDecimal divisor = new BigDecimal(denominator);
        if (divisor.signum() == 0) {
            throw refuse("divides by 0.");
        }
        return new BigDecimal(numerator).divide(divisor, MathContext.DECIMAL128);
    }

    private void check(boolean asWanted) {
        if (!asWanted) {
            throw refuse("is not a number with its unit.");
        }
    }

    private String digits() {
        int from = at;
        while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
            at++;
        }
        return text.substring(from, at);
    }

    private void skipSpaces() {
        while (at < text.length() && text.charAt(at) == ' ') {
            at++;
        }
    }
}
