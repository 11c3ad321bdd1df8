package dev.calotte.document;

import java.util.List;

/**
 * A picture for people, drawn from the first item to the last. Its lower left corner is the origin and y points up;
 * millimetres as printed.
 *
 * @param name where the file belongs
 * @param title what it shows
 * @param widthMm along x
 * @param heightMm along y
 * @param items what is drawn
 */
public record Picture(String name, String title, double widthMm, double heightMm, List<Item> items)
        implements Document {

    /** Something in a picture. */
    public sealed interface Item permits Facet, Disc, Line, Label {}

    /** The lines that fill a facet beside its colour. */
    public enum Hatch {
        /** No lines. */
        NONE,
        /** Lines that rise to the right. */
        RISING,
        /** Lines that fall to the right. */
        FALLING,
        /** Both. */
        CROSSED
    }

    /** How strong the colour of a facet is, where that tells neighbours apart. */
    public enum Tone {
        /** As facets usually are: a quarter of the colour. */
        USUAL,
        /** Stronger: three eighths. */
        DEEP,
        /** Weaker: an eighth. */
        PALE,
        /** The strongest that letters can be read on: a half. */
        DEEPEST
    }

    /** How strong a line is, after ISO 128. */
    public enum Weight {
        /** What stands in front: 0.5 mm. */
        STRONG,
        /** What lies behind, dimensions and leaders: 0.25 mm. */
        FINE,
        /** Grids: 0.13 mm. */
        FAINT,
        /** What stands there already: 0.25 mm in grey. */
        PALE,
        /** No line. */
        NONE
    }

    /** Which point of its text a label is placed by, always on the middle of its height. */
    public enum Anchor {
        /** The left end. */
        START,
        /** The middle. */
        MIDDLE,
        /** The right end. */
        END
    }

    /**
     * A filled polygon with a border.
     *
     * @param xy x and y of its corners in millimetres
     * @param colour the number of its colour from 1, or 0 for white
     * @param tone how strong its colour is
     * @param hatch the lines that fill it
     * @param weight its border
     * @param title what it is, shown when it is pointed at; may be empty
     */
    public record Facet(List<Double> xy, int colour, Tone tone, Hatch hatch, Weight weight, String title)
            implements Item {

        /**
         * Copies the list.
         *
         * @param xy x and y of its corners
         * @param colour the number of its colour
         * @param tone how strong its colour is
         * @param hatch the lines that fill it
         * @param weight its border
         * @param title what it is
         */
        public Facet {
            xy = List.copyOf(xy);
        }

        /**
         * A facet of the usual tone.
         *
         * @param xy x and y of its corners
         * @param colour the number of its colour
         * @param hatch the lines that fill it
         * @param weight its border
         * @param title what it is
         */
        public Facet(List<Double> xy, int colour, Hatch hatch, Weight weight, String title) {
            this(xy, colour, Tone.USUAL, hatch, weight, title);
        }
    }

    /**
     * A filled circle with a border.
     *
     * @param x where its centre is, in millimetres
     * @param y where its centre is
     * @param radiusMm its radius
     * @param colour the number of its colour from 1, or 0 for white
     * @param weight its border
     * @param title what it is, shown when it is pointed at; may be empty
     */
    public record Disc(double x, double y, double radiusMm, int colour, Weight weight, String title) implements Item {}

    /**
     * A straight line.
     *
     * @param x1 where it begins, in millimetres
     * @param y1 where it begins
     * @param x2 where it ends
     * @param y2 where it ends
     * @param weight how strong it is
     * @param dashed whether it is broken, for what is hidden or folded
     */
    public record Line(double x1, double y1, double x2, double y2, Weight weight, boolean dashed) implements Item {}

    /**
     * A line of upright text.
     *
     * @param text the text, any characters
     * @param x where its anchor is, in millimetres
     * @param y where its anchor is
     * @param heightMm the height of its capitals, at least 2.5 in a printed picture
     * @param anchor which of its points that is
     */
    public record Label(String text, double x, double y, double heightMm, Anchor anchor) implements Item {}

    /**
     * Copies the list.
     *
     * @param name where the file belongs
     * @param title what it shows
     * @param widthMm along x
     * @param heightMm along y
     * @param items what is drawn
     */
    public Picture {
        items = List.copyOf(items);
    }
}
