package dev.calotte.svg.paper;

import java.util.ArrayList;
import java.util.List;

/**
 * How wide words are in Helvetica, the typeface that every reader of PDF has: "Core 14 AFM Files" (Adobe Systems 1997),
 * printed once more in the PDF Reference, appendix on standard type 1 fonts. Arial and its like have the same widths.
 */
final class Letters {

    /** The height of capitals as a part of the size of the type, CapHeight 718 in the same files. */
    static final double CAPITALS = 0.718;

    private static final int FIRST = ' ';

    /** In thousandths of the size, from the space to the tilde. */
    private static final int[] WIDTHS = {
        278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556, 556,
                556,
        556, 556, 556, 278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556,
                833,
        722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556, 333, 556, 556, 500,
                556,
        556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556, 556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500,
                334,
        260, 334, 584
    };

    /** As wide as the widest: whatever else there is will not be wider. */
    private static final int OTHERS = 1015;

    /** DejaVu Sans, which many systems without Helvetica take, is wider by a sixth. */
    private static final double STAND_IN = 1.18;

    private static final String MORE = "...";

    private Letters() {}

    /** How wide a line of words is whose capitals are so high. */
    static double widthMm(String text, double heightMm) {
        int thousandths = 0;
        for (int i = 0; i < text.length(); i = text.offsetByCodePoints(i, 1)) {
            thousandths += width(text.codePointAt(i));
        }
        return thousandths / 1000.0 * heightMm / CAPITALS;
    }

    /** How wide it may become where another typeface stands in. */
    static double widestMm(String text, double heightMm) {
        return STAND_IN * widthMm(text, heightMm);
    }

    private static int width(int c) {
        int i = c - FIRST;
        return i >= 0 && i < WIDTHS.length ? WIDTHS[i] : OTHERS;
    }

    /** A line no wider than that, its end left out if need be. */
    static String fitted(String text, double heightMm, double mostMm) {
        if (widestMm(text, heightMm) <= mostMm) {
            return text;
        }
        int end = text.length();
        while (end > 0 && widestMm(text.substring(0, end) + MORE, heightMm) > mostMm) {
            end = text.offsetByCodePoints(end, -1);
        }
        return text.substring(0, end) + MORE;
    }

    /** Lines no wider than that, broken between words. */
    static List<String> wrapped(String text, double heightMm, double mostMm) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ", -1)) {
            if (!line.isEmpty() && widestMm(line + " " + word, heightMm) > mostMm) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines.stream().map(each -> fitted(each, heightMm, mostMm)).toList();
    }
}
