package dev.calotte.cli.brief;

import dev.calotte.dome.Keep;
import dev.calotte.problem.Problem.Code;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Optional;

/** Reads whole numbers, fractions of rows, scales and ratios. */
final class Numbers {

    /** Enough for anything that a message should print. */
    private static final int MOST_DIGITS = 24;

    private static final BigInteger MOST_ROWS = BigInteger.valueOf(1_000_000);
    private static final int SMALLEST_MODEL = 1000;

    private Numbers() {}

    /** A number of digits and nothing else; beyond what a message should print, the least number that long. */
    static Optional<BigInteger> whole(String text) {
        if (text.isEmpty() || !text.chars().allMatch(c -> c >= '0' && c <= '9')) {
            return Optional.empty();
        }
        String digits =
                text.substring((int) text.chars().takeWhile(c -> c == '0').count());
        return Optional.of(
                digits.length() > MOST_DIGITS ? BigInteger.TEN.pow(MOST_DIGITS) : new BigInteger("0" + digits));
    }

    /** What stays of the sphere, unless keys stand below it. */
    static Keep keep(Node node) {
        String text = node instanceof Node.Text value ? value.value() : "";
        if (text.equals("whole")) {
            return new Keep.Whole();
        }
        int slash = text.indexOf('/');
        if (slash < 0) {
            throw notKept(node);
        }
        BigInteger kept = whole(text.substring(0, slash)).orElseThrow(() -> notKept(node));
        BigInteger of = whole(text.substring(slash + 1)).orElseThrow(() -> notKept(node));
        if (kept.signum() == 0 || kept.compareTo(of) > 0 || of.compareTo(MOST_ROWS) > 0) {
            throw new Refusal(
                    Code.IMPOSSIBLE,
                    Seen.text(text) + " is not a part of the sphere's rows.",
                    "Write a fraction above 0 and up to 1, as in 5/9, or whole.");
        }
        return new Keep.Rows(kept.intValueExact(), of.intValueExact());
    }

    private static Refusal notKept(Node node) {
        String seen = node instanceof Node.Text text && !text.value().isEmpty()
                ? Seen.text(text.value()) + " does not say what stays."
                : Seen.sort(node);
        return Refusal.wrong(seen, "Write whole, a fraction of the rows as in 5/9, or { above: 300 mm }.");
    }

    /** How many times smaller a model is: 20 for {@code 1:20}. */
    static double scale(Node node) {
        String text = Values.text(node);
        Optional<BigDecimal> scale = text.startsWith("1:") ? decimal(text.substring(2)) : Optional.empty();
        BigDecimal times =
                scale.orElseThrow(() -> Refusal.wrong(Seen.text(text) + " is not a scale.", "Write for example 1:20."));
        if (times.compareTo(BigDecimal.ONE) < 0 || times.compareTo(BigDecimal.valueOf(SMALLEST_MODEL)) > 0) {
            throw new Refusal(
                    Code.IMPOSSIBLE,
                    text + " is no scale for a model.",
                    "Write something between 1:1 and 1:" + SMALLEST_MODEL + ".");
        }
        return times.doubleValue();
    }

    /** How many times as long as the shortest strut the longest may be. */
    static double strutRatio(Node node) {
        String text = Values.text(node);
        BigDecimal ratio = decimal(text)
                .orElseThrow(() ->
                        Refusal.wrong(Seen.text(text) + " is not a number without a unit.", "Write for example 1.25."));
        if (ratio.compareTo(BigDecimal.ONE) < 0) {
            throw new Refusal(
                    Code.IMPOSSIBLE,
                    text + " is below 1: the longest strut is no shorter than the shortest.",
                    "Write 1 or more, for example 1.25.");
        }
        return ratio.doubleValue();
    }

    /** A part of a whole, written in hundredths: 0.05 for {@code 5 %}. */
    static double share(Node node) {
        String text = Values.text(node);
        String number =
                text.endsWith("%") ? text.substring(0, text.length() - 1).stripTrailing() : "";
        BigDecimal percent = decimal(number)
                .orElseThrow(() -> Refusal.wrong(Seen.text(text) + " is not a percentage.", "Write for example 5 %."));
        if (percent.compareTo(BigDecimal.valueOf(100)) > 0) {
            throw new Refusal(Code.IMPOSSIBLE, text + " is more than all.", "Write something from 0 % to 100 %.");
        }
        return percent.movePointLeft(2).doubleValue();
    }

    /** A number from 0 up, with or without a decimal point. */
    static Optional<BigDecimal> decimal(String text) {
        int point = text.indexOf('.');
        if (text.length() > MOST_DIGITS) {
            return Optional.empty();
        }
        if (point < 0) {
            return whole(text).map(BigDecimal::new);
        }
        return whole(text.substring(0, point))
                .flatMap(front -> whole(text.substring(point + 1)).map(back -> new BigDecimal(text)));
    }
}
