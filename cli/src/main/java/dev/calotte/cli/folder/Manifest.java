package dev.calotte.cli.folder;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The sums of all other files of a result, in the format of {@code sha256sum} of GNU coreutils, so that anybody can check
 * a result without this program: {@code sha256sum -c SHA256SUMS}.
 *
 * @param sums the SHA-256 of each file by its name, whose parts are separated by {@code /}
 */
public record Manifest(Map<String, String> sums) {

    /** The name of its file. */
    public static final String NAME = "SHA256SUMS";

    private static final Pattern LINE = Pattern.compile("([0-9a-f]{64})  ([^\\\\\\n]+)");

    /**
     * Copies the map.
     *
     * @param sums the sum of each file
     */
    public Manifest {
        sums = Collections.unmodifiableMap(new TreeMap<>(sums));
    }

    /**
     * Reads a manifest.
     *
     * @param text the content of its file
     * @return what it says; nothing if a line is not a sum, two spaces and a name, or a name stands there twice
     */
    public static Optional<Manifest> parse(String text) {
        Map<String, String> sums = new TreeMap<>();
        for (String line : text.split("\n", -1)) {
            Matcher matcher = LINE.matcher(line);
            if (!line.isEmpty()) {
                if (!matcher.matches() || sums.put(matcher.group(2), matcher.group(1)) != null) {
                    return Optional.empty();
                }
            }
        }
        return Optional.of(new Manifest(sums));
    }

    /** The text of its file: a line for each file, sorted by name. */
    @Override
    public String toString() {
        return sums.entrySet().stream()
                .map(sum -> sum.getValue() + "  " + sum.getKey() + "\n")
                .collect(Collectors.joining());
    }
}
