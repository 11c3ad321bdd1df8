package dev.calotte.cli.brief;

import dev.calotte.problem.Problem.Code;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * The keys of one level of a brief. Whoever reads the level asks for every key that it knows, names with {@link #later}
 * those that belong to the brief without having an effect, and closes it: what nobody asked for is then a problem. To
 * bring a key into effect, take it out of {@code later} and ask for it.
 */
final class Fields {

    private final Node.Mapping mapping;
    private final String path;
    private final Optional<Place> place;
    private final Problems problems;
    private final boolean readable;
    private final List<String> known = new ArrayList<>();
    private final List<String> later = new ArrayList<>();
    private final Map<String, String> required = new LinkedHashMap<>();
    private final Set<String> failed = new HashSet<>();

    private Fields(Node node, String path, Optional<Place> place, Problems problems) {
        this.readable = node instanceof Node.Mapping;
        this.mapping = node instanceof Node.Mapping m ? m : new Node.Mapping(node.place(), List.of());
        this.path = path;
        this.place = place;
        this.problems = problems;
    }

    /** The keys at the top. */
    static Fields top(Node.Mapping root, Problems problems) {
        return new Fields(root, "", Optional.empty(), problems);
    }

    /** The keys below a key; none if it is missing or has nothing below it. */
    Fields section(String key) {
        known.add(key);
        Optional<Node.Entry> entry = mapping.entry(key);
        Node node = entry.map(Node.Entry::value).orElseGet(() -> absent(key));
        if (node instanceof Node.Text text && text.value().isEmpty()) {
            node = new Node.Mapping(node.place(), List.of());
        }
        if (node instanceof Node.Text || node instanceof Node.Sequence) {
            refuse(key, Refusal.wrong(Seen.sort(node), "Write keys with values, indented below " + key + ":."));
        }
        return new Fields(node, pathOf(key), entry.map(Node.Entry::place), problems);
    }

    /** The keys of each item of a list; none if the key is missing or has to be refused. */
    List<Fields> sections(String key) {
        List<Node> items = read(key, List.of(), node -> items(key, node));
        List<Fields> sections = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
            Node item = items.get(i);
            String at = key + "[" + i + "]";
            if (item instanceof Node.Mapping) {
                sections.add(new Fields(item, pathOf(at), Optional.of(item.place()), problems));
            } else {
                attempt(item, item.place(), at, Fields::notKeys);
            }
        }
        return sections;
    }

    private static Fields notKeys(Node node) {
        throw Refusal.wrong(Seen.sort(node), "Write keys with values, between braces or indented below a dash.");
    }

    /** A section that is there under a misspelt name is not missing as well. */
    private Node absent(String key) {
        boolean misspelt = mapping.entries().stream()
                .anyMatch(entry -> Nearest.of(entry.key(), List.of(key)).isPresent());
        return misspelt ? new Node.Refused(mapping.place()) : new Node.Mapping(mapping.place(), List.of());
    }

    /** Says that a key belongs here, though it may be missing; whether it is there. */
    boolean offers(String key) {
        known.add(key);
        return has(key);
    }

    /** Whether a list stands at a key. */
    boolean isList(String key) {
        return mapping.entry(key)
                .filter(e -> e.value() instanceof Node.Sequence)
                .isPresent();
    }

    /** Whether keys stand below a key. */
    boolean isSection(String key) {
        return mapping.entry(key).filter(e -> e.value() instanceof Node.Mapping).isPresent();
    }

    /** Whether a key is there. */
    boolean has(String key) {
        return mapping.entry(key).isPresent();
    }

    /** Whether what was read of a key was as it should be, or was not there at all. */
    boolean sound(String key) {
        return !failed.contains(key);
    }

    /** The value of a key; the fallback if it is missing or has to be refused. */
    <T> T read(String key, T fallback, Function<Node, T> reader) {
        known.add(key);
        return mapping.entry(key)
                .flatMap(entry -> attempt(entry.value(), entry.place(), key, reader))
                .orElse(fallback);
    }

    /** The items of a list, each once; the fallback if the key is missing or has to be refused. */
    <T> List<T> list(String key, List<T> fallback, Function<Node, T> reader) {
        List<Node> items = read(key, List.of(), node -> items(key, node));
        List<T> values = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
            Node item = items.get(i);
            attempt(item, item.place(), key + "[" + i + "]", node -> once(reader.apply(node), values, node))
                    .ifPresent(values::add);
        }
        return values.isEmpty() ? fallback : List.copyOf(values);
    }

    private static List<Node> items(String key, Node node) {
        if (node instanceof Node.Text text && !text.value().isEmpty()) {
            throw Refusal.wrong(Seen.sort(node), "Write a list: " + key + ": [" + Seen.text(text.value()) + "].");
        }
        if (node instanceof Node.Sequence sequence && !sequence.items().isEmpty()) {
            return sequence.items();
        }
        String seen = node instanceof Node.Sequence ? "the list is empty." : Seen.sort(node);
        throw Refusal.wrong(seen, "Write a list with something in it, or leave the key out.");
    }

    private static <T> T once(T value, List<T> before, Node node) {
        if (before.contains(value)) {
            throw Refusal.wrong(Values.text(node) + " is in the list already.", "Leave one of them out.");
        }
        return value;
    }

    private <T> Optional<T> attempt(Node node, Place at, String key, Function<Node, T> reader) {
        if (!(node instanceof Node.Refused)) {
            try {
                return Optional.of(reader.apply(node));
            } catch (Refusal refusal) {
                problems.add(Optional.of(at), pathOf(key), refusal);
            }
        }
        failed.add(key);
        return Optional.empty();
    }

    /** Notes that a key has a value that was read and cannot be. */
    void refuse(String key, Refusal refusal) {
        failed.add(key);
        problems.add(mapping.entry(key).map(Node.Entry::place).or(() -> place), pathOf(key), refusal);
    }

    /** Names keys that belong to the brief, and that this version does not read. */
    void later(String... keys) {
        later.addAll(List.of(keys));
    }

    /** Says that a key must be there, and what to write if it is not. */
    void require(String key, String mend) {
        required.put(key, mend);
    }

    /** Says that exactly one of several keys must be there, and what to write if none is. */
    void requireOne(List<String> keys, String mend) {
        notTogether(keys);
        if (readable && mapping.entries().isEmpty()) {
            problems.add(place, path, new Refusal(Code.MISSING, "no measure is given.", mend));
        }
    }

    /** Says that of several keys at most one may be there. */
    void notTogether(List<String> keys) {
        List<String> given = keys.stream().filter(this::has).toList();
        if (given.size() > 1) {
            String what = Values.listed(given, "and") + " are given together.";
            problems.add(place, path, new Refusal(Code.CONFLICT, what, "Keep one of them."));
        }
    }

    /** Reports keys that nobody asked for, and those that are missing. */
    void close() {
        List<String> meant = new ArrayList<>();
        for (Node.Entry entry : mapping.entries()) {
            if (later.contains(entry.key())) {
                refuse(entry.key(), notYet());
            } else if (!known.contains(entry.key())) {
                Unknown unknown =
                        new Unknown(entry.key(), known.stream().distinct().toList(), later);
                unknown.nearest().ifPresent(meant::add);
                String where =
                        unknown.isTame() ? pathOf(entry.key()) : entry.place().where();
                problems.add(Optional.of(entry.place()), where, unknown.refusal());
            }
        }
        required.forEach((key, mend) -> {
            if (readable && !has(key) && !meant.contains(key)) {
                refuse(key, new Refusal(Code.MISSING, "the key is missing.", mend));
            }
        });
    }

    private static Refusal notYet() {
        return new Refusal(
                Code.NOT_IN_THIS_VERSION,
                "the key belongs to the brief, but this version does not read it.",
                "Leave it out.");
    }

    private String pathOf(String key) {
        return path.isEmpty() ? key : path + "." + key;
    }
}
