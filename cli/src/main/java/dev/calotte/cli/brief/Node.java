package dev.calotte.cli.brief;

import java.util.List;
import java.util.Optional;

/** A part of a brief, as it is written: values stay text until somebody asks what they mean. */
sealed interface Node {

    /** Where it begins. */
    Place place();

    /**
     * A single value.
     *
     * @param place where it begins
     * @param value the text, without quotes
     */
    record Text(Place place, String value) implements Node {}

    /**
     * Keys with values, in the order of the text, every key once.
     *
     * @param place where it begins
     * @param entries the keys with their values
     */
    record Mapping(Place place, List<Entry> entries) implements Node {
        public Mapping {
            entries = List.copyOf(entries);
        }

        /** The value of a key. */
        Optional<Entry> entry(String key) {
            return entries.stream().filter(entry -> entry.key().equals(key)).findFirst();
        }
    }

    /**
     * A key with its value.
     *
     * @param place where the key begins
     * @param key the key
     * @param value the value
     */
    record Entry(Place place, String key, Node value) {}

    /**
     * A list.
     *
     * @param place where it begins
     * @param items what is in it
     */
    record Sequence(Place place, List<Node> items) implements Node {
        public Sequence {
            items = List.copyOf(items);
        }
    }

    /**
     * A value that was refused already, so that nobody complains about it twice.
     *
     * @param place where it begins
     */
    record Refused(Place place) implements Node {}
}
