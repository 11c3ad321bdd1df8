package dev.calotte.svg.book;

import dev.calotte.document.Book;
import dev.calotte.document.Book.Block;
import dev.calotte.document.Book.Chapter;
import dev.calotte.document.Book.Column;
import dev.calotte.document.Book.Figure;
import dev.calotte.document.Book.Notice;
import dev.calotte.document.Book.Row;
import dev.calotte.document.Book.Source;
import dev.calotte.document.Book.Table;
import dev.calotte.document.Book.Text;
import dev.calotte.document.Book.Tick;
import dev.calotte.document.Book.Ticks;
import dev.calotte.document.Book.View;
import dev.calotte.document.Picture;
import dev.calotte.document.Picture.Anchor;
import dev.calotte.document.Picture.Facet;
import dev.calotte.document.Picture.Hatch;
import dev.calotte.document.Picture.Item;
import dev.calotte.document.Picture.Label;
import dev.calotte.document.Picture.Line;
import dev.calotte.document.Picture.Weight;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** A book of invented content with everything in it that a book may have. */
final class SampleBook {

    /** What a brief may hold: markup, an entity, quotes, a script that runs right to left, a pair of surrogates, controls. */
    static final String NASTY =
            "<script>alert('1')</script> & &amp; \"it's\" \u05d0\u05d1\u05d2 \u202etxt\u202c \ud83c\udfaa \u0007\u0000 ]]> -->";

    private static final RingDome DOME = new RingDome(4, 10);

    private SampleBook() {}

    static Book book() {
        return of(DOME, List.of(glance(DOME), buy(), cut(), mark(), raise(DOME), care()));
    }

    static Book of(RingDome dome, List<Chapter> chapters) {
        return new Book(
                "build-book",
                "Seedling house",
                "a1b2c3",
                chapters,
                Optional.of(dome.scene()),
                "Calotte 0.1.0, invented");
    }

    static Book with(Block... blocks) {
        return of(new RingDome(1, 3), List.of(new Chapter("Cut", "", List.of(blocks), "")));
    }

    static Picture bar(int cuts) {
        List<Item> items = new ArrayList<>();
        for (int i = 0; i < cuts; i++) {
            double left = 10 + i * 40.0;
            items.add(new Facet(
                    List.of(left, 10.0, left + 38, 10.0, left + 38, 20.0, left, 20.0),
                    i + 1,
                    Hatch.RISING,
                    Weight.STRONG,
                    "S" + i));
            items.add(new Label("S" + (i + 1), left + 19, 15, 3.5, Anchor.MIDDLE));
        }
        items.add(new Line(10, 5, 10 + cuts * 40.0, 5, Weight.FINE, true));
        return new Picture("book/bar", "A bar with " + cuts + " cuts", 20 + cuts * 40.0, 28, items);
    }

    static Chapter glance(RingDome dome) {
        return new Chapter(
                "At a glance",
                "",
                List.of(
                        new Text(
                                "",
                                List.of(
                                        "A dome 6 m wide and 2.9 m high of 120 struts and 80 panels. Two people need three days.")),
                        new View("The dome, which can be turned", dome.plan(170)),
                        table("The job in numbers", 3),
                        new Notice(
                                "Snow",
                                List.of(
                                        "Nobody has calculated whether this dome bears snow.",
                                        "Ask before you build."))),
                "A picture of what you are going to build.");
    }

    private static Chapter buy() {
        return new Chapter(
                "Buy",
                "A car with a roof rack, or a delivery.",
                List.of(
                        table("Material", 4),
                        new Text("Spares", List.of("Buy one bar more than the list says.", NASTY))),
                "All material, checked against the list.");
    }

    private static Chapter cut() {
        Table struts = new Table(
                "Struts, by length",
                List.of(
                        new Column("Kind", false),
                        new Column("Pieces", true),
                        new Column("Cut, mm", true),
                        new Column("Tilt, \u00b0", true),
                        new Column("Where it goes", false)),
                IntStream.rangeClosed(1, 8)
                        .mapToObj(i -> new Row(
                                "S" + i,
                                List.of(
                                        "S" + i,
                                        "" + (i * 5),
                                        "1," + (100 + 37 * i),
                                        "" + (9 + i) + ".5",
                                        "row " + i + ", all round")))
                        .toList());
        return new Chapter(
                "Cut",
                "A saw with a stop, a tape, a pencil.",
                List.of(
                        new Figure(bar(6), "Bar 1 of 12: cut from the left", Optional.of(struts)),
                        new Figure(bar(2), "Bar 2 of 12", Optional.empty()),
                        new Ticks(
                                "Cutting",
                                List.of(
                                        new Tick("cut.s1", "Cut 30 of S1 at 1,084 mm.", Optional.empty()),
                                        new Tick(
                                                "cut.s2",
                                                "Cut 10 of S2 at 1,122 mm, and write the mark on each as it comes from the saw, near the end that points up.",
                                                Optional.of(bar(2)))))),
                "120 struts with their marks, in piles by kind.");
    }

    private static Chapter mark() {
        Table panels = new Table(
                "Panels",
                List.of(new Column("Kind", false), new Column("Pieces", true), new Column("Sides, mm", true)),
                IntStream.rangeClosed(1, 8)
                        .mapToObj(i -> new Row("P" + i, List.of("P" + i, "10", "1,084 \u00b7 1,122 \u00b7 1,122")))
                        .toList());
        return new Chapter(
                "Mark",
                "A marker that stays.",
                List.of(new Figure(DOME.plan(120), "Where each kind of panel goes", Optional.of(panels))),
                "");
    }

    private static Chapter raise(RingDome dome) {
        List<Tick> steps = IntStream.rangeClosed(1, 5)
                .mapToObj(i -> new Tick(
                        "raise." + i, "Row " + i + ": put up 20 struts, finger-tight.", Optional.of(dome.plan(80))))
                .toList();
        return new Chapter(
                "Raise",
                "Two ladders, three people, a calm day.",
                List.of(
                        new Notice("Falling", List.of("Nobody stands below while a row is open.")),
                        new Ticks("Row by row", steps)),
                "A dome that stands.");
    }

    private static Chapter care() {
        return new Chapter(
                "Take care",
                "",
                List.of(
                        new Source("The brief", "\n# " + NASTY + "\ndome: { breakdown: 3 }\nsize: { radius: 3 m }\n"),
                        new Text("", List.of("Look at every bolt once a year."))),
                "");
    }

    static Table table(String heading, int rows) {
        return new Table(
                heading,
                List.of(new Column("What", false), new Column("How many", true), new Column("Price, \u20ac", true)),
                IntStream.rangeClosed(1, rows)
                        .mapToObj(i -> new Row("", List.of("Thing " + i + " <b>", i + ",000", i + ".50")))
                        .toList());
    }
}
