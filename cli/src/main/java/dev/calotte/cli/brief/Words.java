package dev.calotte.cli.brief;

import dev.calotte.problem.Problem.Code;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;

/**
 * The words that a key takes.
 *
 * @param <T> what they mean
 */
final class Words<T> implements Function<Node, T> {

    private final Map<String, T> meanings = new LinkedHashMap<>();
    private final List<String> later;

    private Words(List<String> later) {
        this.later = later;
    }

    /** The constants of an enum, written small and with hyphens; later words belong to the brief without an effect. */
    static <E extends Enum<E>> Words<E> of(E[] constants, String... later) {
        Words<E> words = new Words<>(List.of(later));
        Arrays.stream(constants).forEach(constant -> words.meanings.put(word(constant), constant));
        return words;
    }

    /** Words that mean themselves. */
    static Words<String> among(List<String> all) {
        Words<String> words = new Words<>(List.of());
        all.forEach(word -> words.meanings.put(word, word));
        return words;
    }

    /** Words with what each of them means, in the order of the map. */
    static <T> Words<T> meaning(Map<String, T> meanings) {
        Words<T> words = new Words<>(List.of());
        words.meanings.putAll(meanings);
        return words;
    }

    /** A constant as the brief writes it. */
    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    @Override
    public T apply(Node node) {
        String text = Values.text(node);
        if (later.contains(text)) {
            throw new Refusal(
                    Code.NOT_IN_THIS_VERSION,
                    text + " belongs to the brief, but this version does not work with it.",
                    "Write " + either() + ", or leave the key out.");
        }
        if (!meanings.containsKey(text)) {
            throw Refusal.wrong(Seen.text(text) + " is not a word for this key.", mend(text));
        }
        return meanings.get(text);
    }

    private String mend(String text) {
        return Nearest.of(text, List.copyOf(meanings.keySet()))
                .map(word -> "Did you mean " + word + "? " + all())
                .orElse(all());
    }

    private String all() {
        return meanings.size() == 1
                ? "Write " + either() + "."
                : "The words are " + Values.listed(meanings.keySet(), "and") + ".";
    }

    private String either() {
        return Values.listed(meanings.keySet(), "or");
    }
}
