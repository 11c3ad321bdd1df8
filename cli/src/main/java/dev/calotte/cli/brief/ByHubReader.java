package dev.calotte.cli.brief;

import dev.calotte.parts.ByHub;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * Reads what differs by hub: the base ring, inner hubs by their number of struts, the rest.
 *
 * @param <T> what hubs have
 * @param given what was read; where a problem was noted, nothing
 * @param sound whether all of it is as it should be
 */
record ByHubReader<T>(ByHub<T> given, boolean sound) {

    private static final int FEWEST_STRUTS = 3;
    private static final int MOST_STRUTS = 6;

    static <T> ByHubReader<T> read(Fields fields, Function<Node, T> reader, String example) {
        Optional<T> base = one(fields, "base", reader);
        Map<Integer, T> inner = new TreeMap<>();
        boolean some = fields.has("base") || fields.has("other");
        boolean sound = fields.sound("base");
        for (int struts = FEWEST_STRUTS; struts <= MOST_STRUTS; struts++) {
            int number = struts;
            String key = Integer.toString(struts);
            some |= fields.has(key);
            one(fields, key, reader).ifPresent(read -> inner.put(number, read));
            sound &= fields.sound(key);
        }
        Optional<T> other = one(fields, "other", reader);
        if (!some) {
            fields.require("other", example);
        }
        fields.close();
        return new ByHubReader<>(new ByHub<>(base, inner, other), some && sound && fields.sound("other"));
    }

    private static <T> Optional<T> one(Fields fields, String key, Function<Node, T> reader) {
        return fields.read(key, Optional.empty(), reader.andThen(Optional::of));
    }
}
