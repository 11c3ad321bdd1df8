package dev.calotte.book;

import dev.calotte.bill.BillLine;
import dev.calotte.bill.Item;
import dev.calotte.document.Book.Block;
import dev.calotte.document.Book.Chapter;
import dev.calotte.document.Book.Notice;
import dev.calotte.document.Book.Row;
import dev.calotte.document.Book.Table;
import dev.calotte.document.Book.Text;
import dev.calotte.document.Book.Tick;
import dev.calotte.document.Book.Ticks;
import dev.calotte.units.NumberText;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What is bought, with spares and prices. */
final class BuyChapter {

    private final Desk desk;

    BuyChapter(Desk desk) {
        this.desk = desk;
    }

    Chapter chapter() {
        List<BillLine> bought = desk.matter.bill().bought();
        List<Block> blocks = new ArrayList<>();
        if (bought.isEmpty()) {
            blocks.add(new Text(
                    "",
                    List.of(
                            "The brief names no bars, sheets or rolls, so there is nothing to count here. What is made is"
                                    + " listed under Cut.")));
        } else {
            blocks.add(table(bought));
            blocks.add(new Text("", sums()));
            blocks.add(new Ticks("Bought", ticks(bought)));
        }
        if (!desk.matter.stockNotes().isEmpty()) {
            blocks.add(new Text("How the stock is used", desk.matter.stockNotes()));
        }
        blocks.add(new Notice(
                "Before you order",
                List.of(
                        "Have the loads on this site looked at first: they decide what the struts, hubs and anchors must"
                                + " be. This book is geometry only.")));
        return new Chapter(
                "Buy",
                "Prices of your dealers, and the room to store what comes.",
                blocks,
                "Stock and hardware are here, and counted.");
    }

    private Table table(List<BillLine> lines) {
        List<Row> rows = new ArrayList<>();
        for (BillLine line : lines) {
            rows.add(Desk.row(
                    "",
                    capital(name(line)),
                    size(line),
                    amount(line, line.needed()),
                    amount(line, line.spare()),
                    amount(line, line.amount()),
                    Desk.money(line.priceEach()),
                    Desk.money(line.price()),
                    desk.mass(line.massKg())));
        }
        return new Table(
                "To buy",
                List.of(
                        Desk.text("What"),
                        Desk.text("Size"),
                        Desk.number("Needed"),
                        Desk.number("Spare"),
                        Desk.number("Buy"),
                        Desk.number("Price each"),
                        Desk.number("Price"),
                        Desk.number("Mass")),
                rows);
    }

    private static String name(BillLine line) {
        return line.mark().isEmpty() ? line.item().word() : line.item().word() + " " + line.mark();
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    private String size(BillLine line) {
        if (line.lengthMm().isPresent() && line.widthMm().isPresent()) {
            return desk.length(line.lengthMm().getAsDouble()) + " by "
                    + desk.length(line.widthMm().getAsDouble());
        }
        if (line.widthMm().isPresent()) {
            return desk.length(line.widthMm().getAsDouble()) + " wide";
        }
        return line.lengthMm().isPresent() ? desk.length(line.lengthMm().getAsDouble()) : "";
    }

    private String amount(BillLine line, double amount) {
        return line.item() == Item.ROLL ? desk.units.longLength(amount * 1000) : NumberText.trimmed(amount, 0);
    }

    private List<String> sums() {
        List<String> sums = new ArrayList<>();
        desk.matter
                .bill()
                .price()
                .ifPresent(price -> sums.add("Price in all, with spares: "
                        + NumberText.fixed(price, 2)
                        + (desk.matter.bill().lacksPrices() ? ", without what has no price in the brief." : ".")));
        sums.add(
                "Spares: " + NumberText.trimmed(100 * desk.matter.needs().spareShare(), 2)
                        + " % of each sort, whole pieces. Spare struts come out of the spare bars. Masses hold the spares too.");
        return sums;
    }

    private List<Tick> ticks(List<BillLine> lines) {
        List<Tick> ticks = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            BillLine line = lines.get(i);
            String size = size(line);
            ticks.add(new Tick(
                    "buy-" + (i + 1),
                    amount(line, line.amount()) + " \u00d7 " + name(line) + (size.isEmpty() ? "" : ", " + size),
                    Optional.empty()));
        }
        return ticks;
    }
}
