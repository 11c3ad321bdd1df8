package dev.calotte.svg;

import dev.calotte.document.Circle;
import dev.calotte.document.Document;
import dev.calotte.document.Drawing;
import dev.calotte.document.Operation;
import dev.calotte.document.Picture;
import dev.calotte.document.Picture.Anchor;
import dev.calotte.document.Picture.Disc;
import dev.calotte.document.Picture.Facet;
import dev.calotte.document.Picture.Hatch;
import dev.calotte.document.Picture.Item;
import dev.calotte.document.Picture.Label;
import dev.calotte.document.Picture.Line;
import dev.calotte.document.Picture.Weight;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import dev.calotte.testing.LetterF;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Documents made by hand. */
final class Samples {

    private Samples() {}

    static Drawing drawing(Shape... shapes) {
        return drawing("P1", shapes);
    }

    static Drawing drawing(String mark, Shape... shapes) {
        return new Drawing("panels/P1", "Panel", 140, 180, List.of(new Drawing.Part(mark, "by hand", List.of(shapes))));
    }

    /** A pattern with the reference that stands beside each. */
    static Drawing pattern(String name, Shape... shapes) {
        return new Drawing(
                name,
                "Cover glazing, P1, cut 5",
                7000,
                7000,
                List.of(
                        new Drawing.Part("P1", "5 pieces", List.of(shapes)),
                        new Drawing.Part(
                                "REF-100", "100 mm", List.of(Polyline.open(Operation.REF, 6000, 5, 6100, 5)))));
    }

    static Drawing letterF() {
        return new Drawing(
                "panels/F",
                "Panel F, \u00d8 8 & more",
                140,
                180,
                List.of(
                        new Drawing.Part(
                                "F",
                                "a <letter>",
                                List.of(
                                        LetterF.OUTLINE,
                                        new Circle(Operation.DRILL, 25, 135, 4),
                                        Polyline.closed(Operation.CUT_INNER, 50, 70, 50, 80, 60, 75),
                                        Polyline.open(Operation.ENGRAVE, 20, 20, 25, 30, 30, 20),
                                        Polyline.open(Operation.SCORE, 10, 100, 40, 100))),
                        new Drawing.Part(
                                "R",
                                "100 mm",
                                List.of(
                                        Polyline.open(Operation.REF, 10, 170, 110, 170),
                                        Polyline.closed(Operation.SHEET, 0, 0, 140, 0, 140, 180, 0, 180)))));
    }

    static Picture picture(Item... items) {
        return new Picture("drawings/plan", "Plan", 140, 180, List.of(items));
    }

    static Facet facet(int colour, Hatch hatch, String title) {
        return new Facet(List.of(10.0, 10.0, 40.0, 10.0, 25.0, 36.0), colour, hatch, Weight.STRONG, title);
    }

    static Line line(Weight weight, boolean dashed) {
        return new Line(10, 20, 110, 20.5, weight, dashed);
    }

    static Disc disc(String title) {
        return new Disc(30, 20, 2.5, 1, Weight.FINE, title);
    }

    static Label label(String text) {
        return new Label(text, 25, 20, 3.6, Anchor.MIDDLE);
    }

    static Picture plan() {
        List<Hatch> hatches = List.of(Hatch.values());
        List<Item> items = new ArrayList<>();
        for (int colour = 0; colour < 26; colour++) {
            items.add(facet(colour, hatches.get(colour % hatches.size()), "P" + colour));
        }
        items.add(disc("H1 & <co>"));
        items.add(line(Weight.FINE, true));
        items.add(label("P4L \u2013 \u00d8 <\"&'> \ud83d\ude00"));
        return picture(items.toArray(Item[]::new));
    }

    static List<Document> all() {
        return List.of(letterF(), plan());
    }

    static byte[] bytes(Document document) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new SvgExporter().write(document, out);
        return out.toByteArray();
    }

    static String text(Document document) throws IOException {
        return new String(bytes(document), StandardCharsets.UTF_8);
    }
}
