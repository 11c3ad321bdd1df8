package dev.calotte.svg;

import dev.calotte.document.Picture.Facet;
import dev.calotte.document.Picture.Hatch;
import java.io.IOException;
import java.util.Comparator;

/**
 * Lines over the colour of a facet. Slanting ones are what the picture asks for; level and upright ones tell apart
 * colours that come again.
 *
 * @param colour the number of the colour
 * @param hatch the slanting lines
 */
record Hatching(int colour, Hatch hatch) implements Comparable<Hatching> {

    private static final Comparator<Hatching> ORDER =
            Comparator.comparingInt(Hatching::colour).thenComparing(Hatching::hatch);

    /** The sides of the pattern's tile. */
    private static final double TILE_MM = 3;

    private static final double STROKE_MM = 0.13;

    private static final String RISING = "M-1 1L1 -1M0 3L3 0M2 4L4 2";
    private static final String FALLING = "M-1 2L1 4M0 0L3 3M2 -1L4 1";
    private static final String LEVEL = "M0 1.5L3 1.5";
    private static final String UPRIGHT = "M1.5 0L1.5 3";

    static Hatching of(Facet facet) {
        return new Hatching(facet.colour(), facet.hatch());
    }

    boolean isVisible() {
        return !lines().isEmpty();
    }

    String id() {
        return "hatch-" + colour + "-" + hatch;
    }

    String reference() {
        return "url(#" + id() + ")";
    }

    void define(Xml xml) throws IOException {
        xml.open("pattern")
                .with("id", id())
                .with("patternUnits", "userSpaceOnUse")
                .with("width", TILE_MM)
                .with("height", TILE_MM);
        xml.open("path")
                .with("d", lines())
                .with("fill", "none")
                .with("stroke", Palette.shade(colour))
                .with("stroke-width", STROKE_MM)
                .close();
        xml.close();
    }

    private String lines() {
        String slanting = switch (hatch) {
            case NONE -> "";
            case RISING -> RISING;
            case FALLING -> FALLING;
            case CROSSED -> RISING + FALLING;
        };
        return slanting
                + switch (Palette.round(colour)) {
                    case 0 -> "";
                    case 1 -> LEVEL;
                    case 2 -> UPRIGHT;
                    default -> LEVEL + UPRIGHT;
                };
    }

    @Override
    public int compareTo(Hatching other) {
        return ORDER.compare(this, other);
    }
}
