package dev.calotte.svg;

import dev.calotte.document.Picture.Tone;
import java.util.HexFormat;
import java.util.List;

/**
 * The colours of Okabe and Ito, "Color Universal Design" (2008), which stay apart for people with the common kinds of
 * colour blindness. Colours are numbered from 1; after the last one they begin again, in the next round.
 */
final class Palette {

    static final String WHITE = "#ffffff";

    private static final List<Integer> COLOURS =
            List.of(0xE69F00, 0x56B4E9, 0x009E73, 0xF0E442, 0x0072B2, 0xD55E00, 0xCC79A7, 0x000000);

    private static final HexFormat HEX = HexFormat.of();

    private Palette() {}

    /** How many times all the colours came before this one: 0 for the first eight. */
    static int round(int colour) {
        return colour < 1 ? 0 : (colour - 1) / COLOURS.size();
    }

    /** A colour mixed with black, for lines that show on its tint even in greys; black for number 0. */
    static String shade(int colour) {
        return mixed(colour, 1, 2, 0x00);
    }

    /** A colour mixed with white rather than seen through, so that what lies behind is hidden; white for number 0. */
    static String tint(int colour, Tone tone) {
        return colour == 0 ? WHITE : mixed(colour, eighths(tone), 8, 0xFF);
    }

    private static int eighths(Tone tone) {
        return switch (tone) {
            case PALE -> 1;
            case USUAL -> 2;
            case DEEP -> 3;
            case DEEPEST -> 4;
        };
    }

    private static String mixed(int colour, int parts, int of, int with) {
        int rgb = rgb(colour);
        int mixed = 0;
        for (int shift = 16; shift >= 0; shift -= 8) {
            int channel = (rgb >> shift) & 0xFF;
            mixed |= ((parts * channel + (of - parts) * with + of / 2) / of) << shift;
        }
        return "#" + HEX.toHexDigits(mixed, 6);
    }

    private static int rgb(int colour) {
        if (colour < 0) {
            throw new IllegalArgumentException("there is no colour " + colour);
        }
        return colour == 0 ? 0 : COLOURS.get((colour - 1) % COLOURS.size());
    }
}
