package dev.calotte.cli.brief;

import dev.calotte.problem.Problem.Code;
import dev.calotte.units.Area;
import dev.calotte.units.Length;
import dev.calotte.units.UnitException;
import dev.calotte.units.UnitSystem;
import java.util.Collection;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** Reads single values. */
final class Values {

    private static final int LONGEST_TITLE = 200;

    private Values() {}

    /** A text that is not empty. */
    static String text(Node node) {
        if (node instanceof Node.Text text && !text.value().isEmpty()) {
            return text.value();
        }
        throw Refusal.wrong(Seen.sort(node), "Write a single value.");
    }

    /** One line of text for headings. */
    static String title(Node node) {
        String title = text(node).strip();
        if (title.isEmpty()) {
            throw Refusal.wrong("the title is empty.", "Give the dome a name, or leave the key out.");
        }
        if (title.lines().count() > 1) {
            throw Refusal.wrong("the title has several lines.", "Write it in one line.");
        }
        if (title.codePointCount(0, title.length()) > LONGEST_TITLE) {
            throw Refusal.wrong(
                    "the title is longer than " + LONGEST_TITLE + " characters.", "Shorten it: " + Seen.text(title));
        }
        if (!title.codePoints().allMatch(Seen::isPrintable)) {
            throw Refusal.wrong(Seen.text(title) + " holds characters that cannot be seen.", "Leave them out.");
        }
        return title;
    }

    /** A length in millimetres, of any size and sign. */
    static Function<Node, Double> length(UnitSystem bare) {
        return node -> quantity(node, text -> Length.parseMm(text, bare));
    }

    /** An area in square millimetres, of any size and sign. */
    static Function<Node, Double> area() {
        return node -> quantity(node, Area::parseMm2);
    }

    /** A quantity with its unit. */
    static double quantity(Node node, ToDoubleFunction<String> parser) {
        try {
            return parser.applyAsDouble(text(node));
        } catch (UnitException e) {
            throw Refusal.wrong(e.what(), e.mend());
        }
    }

    /** A quantity that this version leaves alone, and therefore has to be 0. */
    static Function<Node, Double> nothing(UnitSystem bare) {
        return node -> {
            if (length(bare).apply(node) != 0) {
                throw new Refusal(
                        Code.NOT_IN_THIS_VERSION,
                        text(node) + " belongs to the brief, but this version works only with 0.",
                        "Leave the key out.");
            }
            return 0.0;
        };
    }

    /** Words with commas, the last with a conjunction. */
    static String listed(Collection<String> words, String conjunction) {
        List<String> list = List.copyOf(words);
        int last = list.size() - 1;
        if (last < 1) {
            return String.join("", list);
        }
        return String.join(", ", list.subList(0, last)) + " " + conjunction + " " + list.get(last);
    }
}
