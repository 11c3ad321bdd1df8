package dev.calotte.svg;

import java.util.List;
import java.util.Locale;

/**
 * The colours of Okabe and Ito, "Color Universal Design" (2008), which stay apart for people with the common kinds of
 * colour blindness. Colours are numbered from 1; after the last one they begin again, in the next round.
 */
final class Palette {

    static final String WHITE = "#ffffff";

    private static final List<Integer> COLOURS =
            List.of(0xE69F00, 0x56B4E9, 0x009E73, 0xF0E442, 0x0072B2, 0xD55E00, 0xCC79A7, 0x000000);

    private static final int PARTS_OF_COLOUR = 1;
    private static final int PARTS = 4;

    private Palette() {}

    /** How many times all the colours came before this one: 0 for the first eight. */
    static int round(int colour) {
        return colour < 1 ? 0 : (colour - 1) / COLOURS.size();
    }

    /** A colour at full strength; black for number 0. */
    static String full(int colour) {
        return hex(rgb(colour));
    }

    /** A colour mixed with white rather than seen through, so that what lies behind is hidden; white for number 0. */
    static String tint(int colour) {
        if (colour == 0) {
            return WHITE;
        }
        int rgb = rgb(colour);
        return hex((mixed(rgb >> 16) << 16) | (mixed((rgb >> 8) & 0xFF) << 8) | mixed(rgb & 0xFF));
    }

    private static int rgb(int colour) {
        if (colour < 0) {
            throw new IllegalArgumentException("there is no colour " + colour);
        }
        return colour == 0 ? 0 : COLOURS.get((colour - 1) % COLOURS.size());
    }

    private static int mixed(int channel) {
        return (PARTS_OF_COLOUR * channel + (PARTS - PARTS_OF_COLOUR) * 0xFF + PARTS / 2) / PARTS;
    }

    private static String hex(int rgb) {
        return String.format(Locale.ROOT, "#%06X", rgb);
    }
}
