package dev.calotte.book;

import dev.calotte.document.Book.Block;
import dev.calotte.document.Book.Chapter;
import dev.calotte.document.Book.Row;
import dev.calotte.document.Book.Table;
import dev.calotte.document.Book.Text;
import dev.calotte.document.Book.Ticks;
import dev.calotte.parts.Hand;
import dev.calotte.parts.HubKind;
import dev.calotte.units.Angle;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** How pieces are told apart. */
final class MarkChapter {

    private final Desk desk;

    MarkChapter(Desk desk) {
        this.desk = desk;
    }

    Chapter chapter() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Text("How marks are read", reading()));
        Table confused = new Confusion(desk).table();
        if (!confused.rows().isEmpty()) {
            blocks.add(confused);
        }
        blocks.addAll(desk.beside("hubs", "Each kind of hub from outside, its struts in order.", hubs()));
        blocks.add(new Ticks(
                "Marked",
                List.of(
                        CutChapter.tick("mark-struts", "Every strut bears its mark at both ends."),
                        CutChapter.tick(
                                "mark-panels", "Every panel bears its mark on the face that is named on its pattern."),
                        CutChapter.tick("mark-hubs", "Every hub bears its mark, and a tick at its first strut."),
                        CutChapter.tick("mark-heaps", "Kinds that are easily confused lie in heaps far apart."))));
        return new Chapter(
                "Mark", "A marker that weather does not wash off.", blocks, "No piece lies about without a mark.");
    }

    private List<String> reading() {
        List<String> lines = new ArrayList<>(List.of(
                "Kinds are S1 and on for struts, P1 and on for panels, H1 and on for hubs, by rising size. A single piece"
                        + " adds its row, counted from the crown, and its place in the row, counted counter-clockwise"
                        + " from the start ray seen from above: P1-3.07 is the seventh place of row 3."));
        boolean handed = desk.parts.panelKinds().stream().anyMatch(kind -> kind.hand() != Hand.NONE);
        if (handed) {
            lines.add("L and R are mirror images and never fit each other's places. Seen from outside and"
                    + " counter-clockwise, the sides of an L come short, middle, long; of an R short, long, middle.");
        }
        if (desk.matter.needs().covers().stream()
                .anyMatch(cover -> cover.patterns().cover().treatment().coded())) {
            lines.add(
                    "Notches tell which edges belong together: in a right joint all of them lie on one another. If they"
                            + " do not, a piece is turned, reversed or the wrong one.");
        }
        return lines;
    }

    private Table hubs() {
        List<Row> rows = new ArrayList<>();
        for (HubKind kind : desk.parts.hubKinds()) {
            rows.add(Desk.row(
                    kind.mark(),
                    kind.mark(),
                    Integer.toString(kind.count()),
                    String.join(" ", kind.strutMarks()),
                    angles(kind.gapsRad()),
                    angles(kind.axialAnglesRad()),
                    kind.open() ? "base" : ""));
        }
        return new Table(
                "Hubs, struts counter-clockwise from outside",
                List.of(
                        Desk.text("Hub"),
                        Desk.number("Count"),
                        Desk.text("Struts"),
                        Desk.text("Between them"),
                        Desk.text("Axial angles"),
                        Desk.text("Where")),
                rows);
    }

    private static String angles(List<Double> rad) {
        return rad.stream().map(each -> Angle.text(each, 1)).collect(Collectors.joining(" "));
    }
}
