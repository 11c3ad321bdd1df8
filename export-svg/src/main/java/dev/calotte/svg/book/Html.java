package dev.calotte.svg.book;

import org.jsoup.nodes.Element;
import org.jsoup.nodes.TextNode;

/** Elements with texts of any characters. */
final class Html {

    private static final int REPLACEMENT = 0xFFFD;

    private Html() {}

    static Element of(String tag) {
        return new Element(tag);
    }

    static Element of(String tag, String text) {
        return of(tag).text(clean(text));
    }

    /** An element with a class, which book.css gives its look. */
    static Element styled(String tag, String style) {
        return of(tag).addClass(style);
    }

    static Element styled(String tag, String style, String text) {
        return of(tag, text).addClass(style);
    }

    /** A button that waits for the script, without which it would do nothing. */
    static Element button(String style, String text) {
        return styled("button", style, text).attr("type", "button");
    }

    /** Adds a part on a line of its own, so that the file can be read and compared. */
    static void line(Element to, Element part) {
        to.appendChild(part).appendChild(new TextNode("\n"));
    }

    /** A text without the characters that XML does not allow, and with line feeds as its only line ends. */
    static String clean(String text) {
        StringBuilder cleaned = new StringBuilder(text.length());
        text.replace("\r\n", "\n")
                .replace('\r', '\n')
                .codePoints()
                .map(c -> isAllowed(c) ? c : REPLACEMENT)
                .forEach(cleaned::appendCodePoint);
        return cleaned.toString();
    }

    /** The production Char of XML 1.0 (fifth edition, section 2.2) without the controls of C1, which HTML reads as others. */
    private static boolean isAllowed(int c) {
        return c == '\t'
                || c == '\n'
                || (c >= 0x20 && c < 0x7F)
                || (c >= 0xA0 && c <= 0xD7FF)
                || (c >= 0xE000 && c <= 0xFFFD)
                || c >= 0x10000;
    }
}
