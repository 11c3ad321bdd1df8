package dev.calotte.dxf;

import java.util.Locale;

/** Text for people in a file that holds ASCII only. */
final class Ascii {

    /** The longest text of release 12. */
    private static final int LONGEST = 255;

    private Ascii() {}

    /**
     * One line: other characters become {@code \U+XXXX}, as in newer releases, and of what is too long the last part of the
     * text is left off.
     *
     * @param text any text
     * @param end ASCII that the line ends with in any case
     */
    static String line(String text, String end) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            String piece = c >= ' ' && c <= '~' ? String.valueOf(c) : String.format(Locale.ROOT, "\\U+%04X", (int) c);
            if (line.length() + piece.length() + end.length() > LONGEST) {
                break;
            }
            line.append(piece);
        }
        return line.append(end).toString();
    }
}
