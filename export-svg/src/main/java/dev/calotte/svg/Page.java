package dev.calotte.svg;

import dev.calotte.document.Picture;
import dev.calotte.document.Picture.Disc;
import dev.calotte.document.Picture.Facet;
import dev.calotte.document.Picture.Item;
import dev.calotte.document.Picture.Label;
import dev.calotte.document.Picture.Line;
import dev.calotte.document.Picture.Tone;
import dev.calotte.document.Picture.Weight;
import dev.calotte.units.NumberText;
import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** A picture as people read it, in the order of its items. */
final class Page {

    private static final String INK = "#000000";
    private static final String GREY = "#8c8c8c";
    static final String FONT = "Arial, Helvetica, sans-serif";

    /** The height of the capitals of common sans-serif typefaces, as a part of the size of the type. */
    private static final double CAPITALS = 0.72;

    private final Picture picture;

    Page(Picture picture) {
        this.picture = picture;
    }

    void write(Xml xml) throws IOException {
        Frame.open(xml, picture.title(), picture.widthMm(), picture.heightMm());
        xml.open("rect")
                .with("width", picture.widthMm())
                .with("height", picture.heightMm())
                .with("fill", Palette.WHITE)
                .close();
        xml.open("g").with("font-family", FONT).with("stroke-linejoin", "round").with("stroke-linecap", "round");
        for (Item item : picture.items()) {
            put(xml, item);
        }
        xml.close().close();
    }

    private void put(Xml xml, Item item) throws IOException {
        if (item instanceof Facet facet) {
            put(xml, facet);
        } else if (item instanceof Disc disc) {
            put(xml, disc);
        } else if (item instanceof Line line) {
            put(xml, line);
        } else if (item instanceof Label label) {
            put(xml, label);
        }
    }

    private void put(Xml xml, Facet facet) throws IOException {
        String outline = outline(facet.xy());
        xml.open("g");
        if (!facet.title().isEmpty()) {
            xml.open("title").close(facet.title());
        }
        xml.open("path").with("d", outline).with("fill", Palette.tint(facet.colour(), facet.tone()));
        Hatching hatching = Hatching.of(facet);
        if (hatching.isVisible()) {
            xml.close();
            put(xml, hatching, hatching.lines(facet.xy(), picture.heightMm()));
            xml.open("path").with("d", outline).with("fill", "none");
        }
        stroke(xml, facet.weight()).close();
        xml.close();
    }

    /** Under the border of its facet, so that lines end in it. */
    private static void put(Xml xml, Hatching hatching, String lines) throws IOException {
        if (!lines.isEmpty()) {
            xml.open("path")
                    .with("d", lines)
                    .with("fill", "none")
                    .with("stroke", hatching.colourOfLines())
                    .with("stroke-width", hatching.widthMm())
                    .close();
        }
    }

    private void put(Xml xml, Disc disc) throws IOException {
        String radius = NumberText.trimmed(disc.radiusMm(), Xml.DECIMALS);
        if (disc.radiusMm() <= 0 || "0".equals(radius)) {
            throw new IllegalArgumentException("a disc has no radius at x " + disc.x() + ", y " + disc.y());
        }
        xml.open("circle")
                .with("cx", disc.x())
                .with("cy", picture.heightMm() - disc.y())
                .with("r", radius)
                .with("fill", Palette.tint(disc.colour(), Tone.USUAL));
        stroke(xml, disc.weight());
        if (disc.title().isEmpty()) {
            xml.close();
        } else {
            xml.open("title").close(disc.title()).close();
        }
    }

    private String outline(List<Double> xy) {
        if (xy.size() % 2 != 0 || xy.size() < 6) {
            throw new IllegalArgumentException("a facet needs x and y of three corners at least");
        }
        PathText text = new PathText(picture.heightMm()).move(xy.get(0), xy.get(1));
        for (int i = 2; i < xy.size(); i += 2) {
            text.line(xy.get(i), xy.get(i + 1));
        }
        return text.close().toString();
    }

    private void put(Xml xml, Line line) throws IOException {
        PathText text =
                new PathText(picture.heightMm()).move(line.x1(), line.y1()).line(line.x2(), line.y2());
        xml.open("path").with("d", text.toString()).with("fill", "none");
        if (line.dashed()) {
            xml.with("stroke-dasharray", "3 1.5");
        }
        stroke(xml, line.weight()).close();
    }

    private void put(Xml xml, Label label) throws IOException {
        put(xml, label, picture.heightMm());
    }

    /** The height of the letters is given by their capitals, and their place by the middle of these. */
    static void put(Xml xml, Label label, double pageHeightMm) throws IOException {
        if (label.heightMm() <= 0) {
            throw new IllegalArgumentException("the label " + label.text() + " has no height");
        }
        xml.open("text")
                .with("x", label.x())
                .with("y", pageHeightMm - label.y() + label.heightMm() / 2)
                .with("font-size", label.heightMm() / CAPITALS)
                .with("text-anchor", label.anchor().name().toLowerCase(Locale.ROOT))
                .close(label.text());
    }

    private static Xml stroke(Xml xml, Weight weight) {
        if (weight == Weight.NONE) {
            return xml;
        }
        return xml.with("stroke", weight == Weight.PALE ? GREY : INK).with("stroke-width", widthMm(weight));
    }

    /** After ISO 128. */
    private static double widthMm(Weight weight) {
        return switch (weight) {
            case STRONG -> 0.5;
            case FINE, PALE -> 0.25;
            case FAINT -> 0.13;
            case NONE -> 0;
        };
    }
}
