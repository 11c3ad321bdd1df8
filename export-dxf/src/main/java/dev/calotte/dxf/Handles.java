package dev.calotte.dxf;

import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * Hands out the hexadecimal numbers by which records of release 2000 are known: first to the names of a scaffold, in the
 * order of the file, then to whoever asks.
 */
final class Handles {

    private final Map<String, String> named = new TreeMap<>();
    private long last;

    Handles(Scaffold scaffold) {
        for (Scaffold.Line line : scaffold.lines()) {
            if (line.value().startsWith("@")) {
                named.computeIfAbsent(line.value(), name -> next());
            }
        }
    }

    String of(String name) {
        return named.get(name);
    }

    String next() {
        last++;
        return text(last);
    }

    /** A number above all that are handed out once so many more are. */
    String above(long more) {
        return text(last + more + 1);
    }

    private static String text(long handle) {
        return Long.toHexString(handle).toUpperCase(Locale.ROOT);
    }
}
