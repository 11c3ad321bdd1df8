package dev.calotte.cli.brief;

import dev.calotte.export.Colour;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Pattern;

/** Reads colours: the sixteen names of the basic colours of CSS (W3C, CSS Color Module Level 4, 6.1), or six digits. */
final class Colours {

    private static final Pattern DIGITS = Pattern.compile("#[0-9A-Fa-f]{6}");
    private static final int HEXADECIMAL = 16;
    private static final int BYTE = 256;
    private static final Map<String, Integer> NAMES = new LinkedHashMap<>();

    static {
        NAMES.put("black", 0x000000);
        NAMES.put("silver", 0xc0c0c0);
        NAMES.put("gray", 0x808080);
        NAMES.put("white", 0xffffff);
        NAMES.put("maroon", 0x800000);
        NAMES.put("red", 0xff0000);
        NAMES.put("purple", 0x800080);
        NAMES.put("fuchsia", 0xff00ff);
        NAMES.put("green", 0x008000);
        NAMES.put("lime", 0x00ff00);
        NAMES.put("olive", 0x808000);
        NAMES.put("yellow", 0xffff00);
        NAMES.put("navy", 0x000080);
        NAMES.put("blue", 0x0000ff);
        NAMES.put("teal", 0x008080);
        NAMES.put("aqua", 0x00ffff);
    }

    private Colours() {}

    static Colour read(Node node) {
        String text = Values.text(node);
        if (NAMES.containsKey(text)) {
            return colour(NAMES.get(text));
        }
        if (DIGITS.matcher(text).matches()) {
            return colour(Integer.parseInt(text.substring(1), HEXADECIMAL));
        }
        throw Refusal.wrong(
                Seen.text(text) + " is not a colour.",
                "Write \"#ff0000\", in quotation marks, or one of " + Values.listed(NAMES.keySet(), "and") + ".");
    }

    private static Colour colour(int rgb) {
        return new Colour(rgb / BYTE / BYTE, rgb / BYTE % BYTE, rgb % BYTE);
    }
}
