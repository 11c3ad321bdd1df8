package dev.calotte.book;

import dev.calotte.caution.Caution;
import dev.calotte.caution.Cautions;
import dev.calotte.document.Book.Block;
import dev.calotte.document.Book.Chapter;
import dev.calotte.document.Book.Row;
import dev.calotte.document.Book.Source;
import dev.calotte.document.Book.Table;
import dev.calotte.document.Book.Text;
import java.util.List;

/** All cautions together, those that may concern it too, and what the book was made from. */
final class CareChapter {

    private final Desk desk;

    CareChapter(Desk desk) {
        this.desk = desk;
    }

    Chapter chapter() {
        List<Block> blocks = List.of(
                new Text(
                        "",
                        List.of(
                                "This book computes geometry and quantities. On strength, loads and fire it says nothing:"
                                        + " local codes and licensed people decide.")),
                table("What to mind with this dome", desk.matter.cautions()),
                table("What may concern it too", Cautions.depending()),
                new Source("The brief that made this book", desk.matter.source()));
        return new Chapter("Take care", "", blocks, "");
    }

    private static Table table(String heading, List<Caution> cautions) {
        List<Row> rows = cautions.stream()
                .map(caution -> Desk.row("", caution.topic(), caution.text(), caution.deferTo()))
                .toList();
        return new Table(
                heading, List.of(Desk.text("About"), Desk.text("What to mind"), Desk.text("Whom to ask")), rows);
    }
}
