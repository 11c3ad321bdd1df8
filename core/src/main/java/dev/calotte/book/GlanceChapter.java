package dev.calotte.book;

import dev.calotte.document.Book.Block;
import dev.calotte.document.Book.Chapter;
import dev.calotte.document.Book.Row;
import dev.calotte.document.Book.Table;
import dev.calotte.document.Book.Text;
import dev.calotte.document.Book.View;
import dev.calotte.document.Picture;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Measures;
import dev.calotte.parts.RiserWall;
import dev.calotte.sphere.Breakdown;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** The job in numbers, and how it looks. */
final class GlanceChapter {

    private final Desk desk;

    GlanceChapter(Desk desk) {
        this.desk = desk;
    }

    Chapter chapter() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Text("", List.of(sentence())));
        List<Picture> plans = desk.drawings("plan");
        if (!plans.isEmpty()) {
            blocks.add(new View(
                    "Turn it with a finger, the mouse or the arrow keys; touch a piece to see what it is.",
                    plans.get(0)));
        }
        blocks.add(numbers());
        blocks.addAll(desk.figures("elevation", "From the side, with heights."));
        blocks.addAll(desk.figures("plan", "Seen from above, spread out so that every mark can be read."));
        if (!desk.matter.notes().isEmpty()) {
            blocks.add(new Text("Notes", desk.matter.notes()));
        }
        return new Chapter("At a glance", "", blocks, "You know what will stand there, and how large it is.");
    }

    private String sentence() {
        DomeSpec spec = desk.dome.spec();
        return Desk.count(desk.dome.struts().size(), "strut") + " of "
                + Desk.count(desk.parts.strutKinds().size(), "kind") + ", "
                + Desk.count(desk.dome.panels().size(), "panel") + " of "
                + Desk.count(desk.parts.panelKinds().size(), "kind") + " and "
                + Desk.count(desk.dome.hubs().size(), "hub") + " of "
                + Desk.count(desk.parts.hubKinds().size(), "kind") + ": " + article(word(spec.solid())) + " "
                + word(spec.solid()) + " divided " + divided(spec.breakdown()) + ", spacing " + word(spec.spacing())
                + ", "
                + word(spec.up()) + " up, of which " + kept(spec.keep()) + ".";
    }

    private static String divided(Breakdown breakdown) {
        return breakdown.classNumber() == 1 ? breakdown.frequency() + "V" : breakdown.toString();
    }

    private static String article(String word) {
        return "aeiou".indexOf(word.charAt(0)) >= 0 ? "an" : "a";
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    private String kept(Keep keep) {
        if (keep instanceof Keep.AboveHeight above) {
            return "all above " + desk.length(above.heightMm()) + " over the centre is kept";
        }
        return keep instanceof Keep.Whole ? "all is kept" : keep + " of the rows are kept";
    }

    private Table numbers() {
        Measures m = desk.dome.measures();
        List<Row> rows = new ArrayList<>();
        rows.add(Desk.row("", "Radius to the hub centres", desk.length(m.radiusMm())));
        rows.add(Desk.row("", "Height from the lowest hub to the highest", desk.length(m.heightMm())));
        desk.matter
                .needs()
                .riser()
                .map(RiserWall::totalHeightMm)
                .ifPresent(mm -> rows.add(Desk.row("", "Height with the wall under it", desk.length(mm))));
        if (!desk.dome.baseRing().isEmpty()) {
            rows.add(Desk.row("", "Floor across, through the base hubs", desk.length(m.floorDiameterMm())));
            rows.add(Desk.row("", "Floor area", desk.units.area(m.floorAreaMm2())));
            rows.add(Desk.row("", "Base hubs differ in height by up to", desk.length(m.baseSpreadMm())));
        }
        rows.add(Desk.row("", "Skin", desk.units.area(m.surfaceAreaMm2())));
        rows.add(Desk.row("", "Space inside, to the lowest hub", desk.units.volume(m.volumeMm3())));
        desk.masses.frameKg().ifPresent(kg -> rows.add(Desk.row("", "Struts or rails weigh", desk.units.mass(kg))));
        desk.masses.panelsKg().ifPresent(kg -> rows.add(Desk.row("", "Panels weigh", desk.units.mass(kg))));
        desk.matter
                .bill()
                .price()
                .ifPresent(price -> rows.add(Desk.row("", price(), Desk.money(OptionalDouble.of(price)))));
        return new Table("The dome in numbers", List.of(Desk.text("What"), Desk.number("How much")), rows);
    }

    private String price() {
        return desk.matter.bill().lacksPrices()
                ? "Price of what has one, with spares"
                : "Price of all that is bought, with spares";
    }
}
