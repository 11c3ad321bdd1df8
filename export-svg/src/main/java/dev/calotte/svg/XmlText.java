package dev.calotte.svg;

/** Text inside XML 1.0. */
final class XmlText {

    private static final int REPLACEMENT = 0xFFFD;

    private XmlText() {}

    /** Appends a text so that it reads back as it was, but for characters that XML does not allow. */
    static void append(StringBuilder xml, String text) {
        for (int i = 0; i < text.length(); ) {
            int c = text.codePointAt(i);
            append(xml, c);
            i += Character.charCount(c);
        }
    }

    private static void append(StringBuilder xml, int c) {
        switch (c) {
            case '<' -> xml.append("&lt;");
            case '>' -> xml.append("&gt;");
            case '&' -> xml.append("&amp;");
            case '"' -> xml.append("&quot;");
            case '\t', '\n', '\r' -> xml.append("&#").append(c).append(';');
            default -> xml.appendCodePoint(isAllowed(c) ? c : REPLACEMENT);
        }
    }

    /** The production Char of XML 1.0 (fifth edition, section 2.2), without the three above. */
    private static boolean isAllowed(int c) {
        return (c >= 0x20 && c <= 0xD7FF) || (c >= 0xE000 && c <= 0xFFFD) || c >= 0x10000;
    }
}
