package dev.calotte.book;

import dev.calotte.assembly.Patch;
import dev.calotte.choose.CoverPlan;
import dev.calotte.document.Book.Block;
import dev.calotte.document.Book.Chapter;
import dev.calotte.document.Book.Column;
import dev.calotte.document.Book.Figure;
import dev.calotte.document.Book.Row;
import dev.calotte.document.Book.Table;
import dev.calotte.document.Book.Text;
import dev.calotte.document.Book.Tick;
import dev.calotte.document.Book.Ticks;
import dev.calotte.document.Picture;
import dev.calotte.drawing.StockPicture;
import dev.calotte.drawing.StockPictures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What is cut, in the order of the workshop: one setting after the other, and a trial before all of it. */
final class CutChapter {

    private final Desk desk;

    CutChapter(Desk desk) {
        this.desk = desk;
    }

    Chapter chapter() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(trial());
        blocks.addAll(new StrutCuts(desk).blocks());
        blocks.addAll(new PanelCuts(desk).blocks());
        for (CoverPlan plan : desk.matter.needs().plans()) {
            StockPictures.ofCover(plan, desk.units).forEach(picture -> blocks.add(figure(picture)));
        }
        if (desk.matter.jigs()) {
            blocks.add(
                    new Text(
                            "Jigs",
                            List.of(
                                    "Print the fit coupon first, then one jig for each kind of hub: stl/jigs, or all in one file,"
                                            + " stl/plate.3mf. Jigs hold pieces at their angles while you work; they carry nothing.")));
        }
        return new Chapter(
                "Cut",
                "Stock, a saw with a stop, a tape, a marker; eye and ear protection.",
                blocks,
                "Every strut, hub and panel is cut, with its mark on it, in heaps by kind.");
    }

    private static Figure figure(StockPicture stock) {
        Picture picture = stock.picture();
        return new Figure(
                picture, picture.title(), stock.sheets().isEmpty() ? Optional.empty() : Optional.of(table(stock)));
    }

    /** Which piece of which sheet lies at each place. */
    private static Table table(StockPicture stock) {
        List<Column> columns = new ArrayList<>();
        columns.add(Desk.text("Sheet"));
        for (int place = 1; place <= stock.places().size(); place++) {
            columns.add(Desk.text(place + ": " + stock.places().get(place - 1)));
        }
        List<Row> rows = stock.sheets().stream()
                .map(sheet -> new Row(
                        "",
                        Stream.concat(Stream.of(Integer.toString(sheet.sheet())), sheet.marks().stream())
                                .toList()))
                .toList();
        return new Table("What lies at each place", columns, rows);
    }

    private Ticks trial() {
        Patch first = desk.matter.patches().patches().get(0);
        List<Tick> ticks = new ArrayList<>();
        ticks.add(
                tick("cut-reference", "Measure the 100 mm reference of one pattern, as it comes out of your machine."));
        ticks.add(tick(
                "cut-trial",
                "Trial fit: cut what patch " + first.mark() + " takes ("
                        + JoinChapter.counted(first.kind().panels())
                        + "), with the struts round its panels, and put it together before the rest is cut."));
        ticks.add(tick(
                "cut-trial-measured", "Measure the trial: struts node to node, and panels across, as listed below."));
        return new Ticks("Before you cut all of it", ticks);
    }

    static Tick tick(String id, String text) {
        return new Tick(id, text, Optional.empty());
    }
}
