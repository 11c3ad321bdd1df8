package dev.calotte.dxf;

import java.util.Locale;

/** Text for people in a file that holds ASCII only. */
final class Ascii {

    /** The longest text of release 12. */
    private static final int LONGEST = 255;

    private Ascii() {}

    /** One line: other characters become {@code \U+XXXX}, as in newer releases, and what is too long is left off. */
    static String line(String text) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            String piece = c >= ' ' && c <= '~' ? String.valueOf(c) : String.format(Locale.ROOT, "\\U+%04X", (int) c);
            if (line.length() + piece.length() > LONGEST) {
                break;
            }
            line.append(piece);
        }
        return line.toString();
    }
}
