package dev.calotte.svg.book;

import dev.calotte.document.Scene;
import dev.calotte.document.Scene.Piece;
import dev.calotte.units.NumberText;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A scene as JSON for the script: {@code xyz} in tenths of a millimetre at the finest, {@code kinds} as mark and colour,
 * {@code abouts}, and {@code pieces} as mark, number of the kind, number of the about, places. What many pieces share is
 * written once.
 */
final class SceneText {

    private static final int DECIMALS = 1;

    private final Scene scene;
    private final Index kinds = new Index();
    private final Index abouts = new Index();

    SceneText(Scene scene) {
        this.scene = scene;
    }

    String text() {
        List<String> pieces = scene.pieces().stream().map(this::piece).toList();
        List<String> places =
                scene.xyz().stream().map(v -> NumberText.trimmed(v, DECIMALS)).toList();
        return "{\"xyz\":[" + String.join(",", places) + "],\n\"kinds\":" + lines(kinds.entries) + ",\n\"abouts\":"
                + lines(abouts.entries) + ",\n\"pieces\":" + lines(pieces) + "}";
    }

    private String piece(Piece piece) {
        StringBuilder text = new StringBuilder("[").append(quoted(piece.mark()));
        text.append(',').append(kinds.number("[" + quoted(piece.kind()) + "," + piece.colour() + "]"));
        text.append(',').append(abouts.number(quoted(piece.about())));
        piece.places().forEach(place -> text.append(',').append(place));
        return text.append(']').toString();
    }

    private static String lines(List<String> entries) {
        return "[" + String.join(",\n", entries) + "]";
    }

    /** No text may end the script element or begin a comment in it, so every angle bracket is written by its number. */
    static String quoted(String text) {
        StringBuilder json = new StringBuilder("\"");
        for (char c : Html.clean(text).toCharArray()) {
            switch (c) {
                case '"', '\\' -> json.append('\\').append(c);
                case '<', '>', '&', '\n', '\t', '\u2028', '\u2029' -> json.append(numbered(c));
                default -> json.append(c);
            }
        }
        return json.append('"').toString();
    }

    private static String numbered(char c) {
        String hex = Integer.toHexString(c);
        return "\\u" + "0".repeat(4 - hex.length()) + hex;
    }

    /** Gives each text its number, in the order in which they come. */
    private static final class Index {

        private final List<String> entries = new ArrayList<>();
        private final Map<String, Integer> numbers = new HashMap<>();

        int number(String entry) {
            return numbers.computeIfAbsent(entry, fresh -> {
                entries.add(fresh);
                return entries.size() - 1;
            });
        }
    }
}
