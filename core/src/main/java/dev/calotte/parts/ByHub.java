package dev.calotte.parts;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Something that hubs have by what they are.
 *
 * @param <T> what they have
 * @param base at hubs of the base ring; if it is absent, as at other hubs
 * @param inner at inner hubs, by their number of struts
 * @param other at hubs that the two above do not name
 */
public record ByHub<T>(Optional<T> base, Map<Integer, T> inner, Optional<T> other) {

    /**
     * Copies the map.
     *
     * @param base at hubs of the base ring
     * @param inner at inner hubs, by their number of struts
     * @param other at all others
     */
    public ByHub {
        inner = Collections.unmodifiableMap(new TreeMap<>(inner));
    }

    /**
     * The same everywhere.
     *
     * @param <T> what hubs have
     * @param each what every hub has
     * @return as a record
     */
    public static <T> ByHub<T> all(T each) {
        return new ByHub<>(Optional.empty(), Map.of(), Optional.of(each));
    }

    /**
     * What a hub has.
     *
     * @param atBase whether it is a hub of the base ring
     * @param struts how many struts it has
     * @return what it has; nothing if none is given for such a hub
     */
    public Optional<T> of(boolean atBase, int struts) {
        if (atBase && base.isPresent()) {
            return base;
        }
        return !atBase && inner.containsKey(struts) ? Optional.of(inner.get(struts)) : other;
    }

    /** All that are given. */
    Stream<T> given() {
        return Stream.of(base.stream(), inner.values().stream(), other.stream()).flatMap(each -> each);
    }

    static String which(boolean atBase, int struts) {
        return atBase ? "hubs of the base ring" : "inner hubs of " + struts + " struts";
    }

    static String key(boolean atBase, int struts) {
        return atBase ? "base" : Integer.toString(struts);
    }
}
