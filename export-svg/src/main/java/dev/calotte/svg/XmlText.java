package dev.calotte.svg;

import dev.calotte.units.TextBuffer;

/** Text inside XML 1.0. */
final class XmlText {

    private static final int REPLACEMENT = 0xFFFD;

    private XmlText() {}

    /** Appends a text so that it reads back as it was, but for characters that XML does not allow. */
    static void add(TextBuffer xml, String text) {
        if (isPlain(text)) {
            xml.add(text);
            return;
        }
        for (int i = 0; i < text.length(); ) {
            int c = text.codePointAt(i);
            xml.add(written(c));
            i += Character.charCount(c);
        }
    }

    /** Whether a text is written as it is. */
    private static boolean isPlain(String text) {
        boolean plain = true;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            plain &= c >= ' ' && c <= '~' && c != '<' && c != '>' && c != '&' && c != '"';
        }
        return plain;
    }

    private static String written(int c) {
        return switch (c) {
            case '<' -> "&lt;";
            case '>' -> "&gt;";
            case '&' -> "&amp;";
            case '"' -> "&quot;";
            case '\t', '\n', '\r' -> "&#" + c + ';';
            default -> Character.toString(isAllowed(c) ? c : REPLACEMENT);
        };
    }

    /** The production Char of XML 1.0 (fifth edition, section 2.2), without the three above. */
    private static boolean isAllowed(int c) {
        return (c >= 0x20 && c <= 0xD7FF) || (c >= 0xE000 && c <= 0xFFFD) || c >= 0x10000;
    }
}
