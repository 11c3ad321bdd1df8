package dev.calotte.dxf;

import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The comment that a file begins with: what it shows, and its unit. */
final class Title {

    static final String UNIT = "millimetres";

    private static final Pattern ESCAPED = Pattern.compile("\\\\U\\+([0-9A-F]{4})");

    private Title() {}

    /** As it is written, in one line, since there are readers that take the first comment and no other. */
    static String comment(String title) {
        return Ascii.line(title, title.isEmpty() ? UNIT : ", " + UNIT);
    }

    /** What was written, as far as a line had room for it; empty for a comment of others, which may be about anything. */
    static Optional<String> of(String comment) {
        String end = ", " + UNIT;
        return comment.endsWith(end)
                ? Optional.of(letters(comment.substring(0, comment.length() - end.length())))
                : Optional.empty();
    }

    private static String letters(String text) {
        return ESCAPED.matcher(text).replaceAll(Title::letter);
    }

    private static String letter(MatchResult escaped) {
        return Matcher.quoteReplacement(String.valueOf((char) Integer.parseInt(escaped.group(1), 16)));
    }
}
