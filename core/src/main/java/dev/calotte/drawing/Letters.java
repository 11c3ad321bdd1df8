package dev.calotte.drawing;

import dev.calotte.document.Picture.Anchor;
import dev.calotte.document.Picture.Label;
import java.util.ArrayList;
import java.util.List;

/**
 * How much room upright sans-serif letters take. Heights after ISO 3098; widths are those of the wider typefaces in
 * common use, since what will be at hand is not known.
 */
final class Letters {

    static final double TITLE = 5;
    static final double MARK = 3.5;
    static final double SMALL = 2.5;

    /** What letters reach over and under their capitals, as a part of the height of these. */
    private static final double REACH = 0.3;

    private Letters() {}

    static double widthMm(String text, double heightMm) {
        return heightMm * text.codePoints().mapToDouble(Letters::width).sum();
    }

    /** The width of a letter over the height of a capital. */
    private static double width(int letter) {
        if (" .,:;'|!()-/ijlft°\u00b7".indexOf(letter) >= 0) {
            return 0.55;
        }
        if ("mwMW@%".indexOf(letter) >= 0) {
            return 1.38;
        }
        return letter >= 'A' && letter <= 'Z' ? 0.98 : letter < 0x250 ? 0.89 : 1.5;
    }

    /** What a label covers. */
    static Box box(Label label) {
        double width = widthMm(label.text(), label.heightMm());
        double left = label.x()
                - switch (label.anchor()) {
                    case START -> 0;
                    case MIDDLE -> width / 2;
                    case END -> width;
                };
        double half = label.heightMm() * (0.5 + REACH);
        return new Box(left, label.y() - half, left + width, label.y() + half);
    }

    /** What the capitals of a label in the middle of a place cover. */
    static Box capitals(String text, double heightMm) {
        return Box.around(0, 0, widthMm(text, heightMm), heightMm);
    }

    static Label middle(String text, double x, double y, double heightMm) {
        return new Label(text, x, y, heightMm, Anchor.MIDDLE);
    }

    /** Lines that are no wider than the room, broken between words; a word too wide is shortened. */
    static List<String> wrapped(String text, double heightMm, double roomMm) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.split(" ", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && widthMm(longer, heightMm) > roomMm) {
                lines.add(shortened(line, heightMm, roomMm));
                longer = word;
            }
            line = longer;
        }
        lines.add(shortened(line, heightMm, roomMm));
        return lines;
    }

    /** The text, or as much of its beginning as there is room for. */
    static String shortened(String text, double heightMm, double roomMm) {
        if (widthMm(text, heightMm) <= roomMm) {
            return text;
        }
        int[] letters = text.codePoints().toArray();
        int count = letters.length;
        while (count > 0 && widthMm(new String(letters, 0, count) + "\u2026", heightMm) > roomMm) {
            count--;
        }
        return new String(letters, 0, count).stripTrailing() + "\u2026";
    }
}
