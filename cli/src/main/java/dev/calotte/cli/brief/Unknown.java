package dev.calotte.cli.brief;

import dev.calotte.problem.Problem.Code;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A key that the brief does not have.
 *
 * @param key the key as it is written
 * @param known the keys that there are at its level
 * @param later the keys that belong there, and that this version does not read
 */
record Unknown(String key, List<String> known, List<String> later) {

    private static final int LONGEST = 40;
    private static final String COMMA = "A comma between braces begins a new key: write fractions with a point.";

    /** The key that was probably meant. */
    Optional<String> nearest() {
        return Nearest.of(key, Stream.concat(known.stream(), later.stream()).toList());
    }

    /** Whether the key can stand in a path. */
    boolean isTame() {
        return !key.isEmpty()
                && key.length() <= LONGEST
                && key.chars().allMatch(c -> c == '-' || c == '_' || Character.isLetterOrDigit(c));
    }

    Refusal refusal() {
        String seen = key.isEmpty() ? "a key without a name" : Seen.text(key);
        return new Refusal(
                Code.UNKNOWN_KEY,
                seen + " is not a key of the brief here.",
                isNumber() ? COMMA : nearest().map(this::suggestion).orElse(all()));
    }

    /** What is left behind the comma of a number between braces. */
    private boolean isNumber() {
        return !key.isEmpty() && key.charAt(0) >= '0' && key.charAt(0) <= '9';
    }

    private String all() {
        return "The keys here are " + Values.listed(known, "and") + ".";
    }

    private String suggestion(String word) {
        return later.contains(word)
                ? "It looks like " + word + ", which this version does not read: leave it out."
                : "Did you mean " + word + "?";
    }
}
