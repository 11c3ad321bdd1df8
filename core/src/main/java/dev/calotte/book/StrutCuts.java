package dev.calotte.book;

import dev.calotte.bill.BillLine;
import dev.calotte.bill.Item;
import dev.calotte.document.Book.Block;
import dev.calotte.document.Book.Column;
import dev.calotte.document.Book.Figure;
import dev.calotte.document.Book.Row;
import dev.calotte.document.Book.Table;
import dev.calotte.document.Book.Text;
import dev.calotte.document.Book.Tick;
import dev.calotte.document.Book.Ticks;
import dev.calotte.document.Picture;
import dev.calotte.drawing.StockPictures;
import dev.calotte.nest.BarPlan;
import dev.calotte.nest.Cut;
import dev.calotte.nest.CutBar;
import dev.calotte.parts.Ends;
import dev.calotte.parts.FlatEnds;
import dev.calotte.parts.RailKind;
import dev.calotte.parts.StrutKind;
import dev.calotte.units.Angle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Struts or rails: their cut list, what is set up once for all of a sort, and the bars that they come from. */
final class StrutCuts {

    private final Desk desk;

    StrutCuts(Desk desk) {
        this.desk = desk;
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(struts());
        if (desk.parts.railKinds().isEmpty()) {
            blocks.add(new Ticks("Set-ups for struts, one after the other", lengths()));
            flattened().ifPresent(blocks::add);
        } else {
            blocks.add(rails());
            blocks.add(new Ticks("Set-ups for rails: all cuts at one setting, then the next", settings()));
        }
        desk.matter.needs().bars().ifPresent(plan -> addBars(blocks, plan));
        return blocks;
    }

    private Table struts() {
        boolean flat = desk.parts.joinery().ends() instanceof Ends.Flattened;
        List<Column> columns = new ArrayList<>(List.of(
                Desk.text("Strut"),
                Desk.number("Count"),
                Desk.number("Cut length"),
                Desk.number("Node to node"),
                Desk.number("Axial angle"),
                Desk.text("Dihedrals")));
        if (flat) {
            columns.addAll(List.of(
                    Desk.number("Hole to hole"),
                    Desk.number("Hole from end"),
                    Desk.number("Bend from end"),
                    Desk.number("Bend")));
        }
        List<Row> rows = new ArrayList<>();
        for (StrutKind kind : desk.parts.strutKinds()) {
            List<String> cells = new ArrayList<>(List.of(
                    kind.mark(),
                    Integer.toString(kind.count()),
                    desk.cut(kind.cutLengthMm()),
                    desk.cut(kind.lengthMm()),
                    Angle.text(kind.axialAngleRad(), 2),
                    kind.dihedrals().stream()
                            .map(d -> Angle.text(d.angleRad(), 2) + " \u00d7 " + d.count())
                            .collect(Collectors.joining(", "))));
            kind.flatEnds().ifPresent(ends -> cells.addAll(flat(ends)));
            rows.add(new Row(kind.mark(), cells));
        }
        return new Table("Struts", columns, rows);
    }

    private List<String> flat(FlatEnds ends) {
        return List.of(
                desk.cut(ends.holeToHoleMm()),
                desk.cut(ends.holeFromEndMm()),
                desk.cut(ends.bendFromEndMm()),
                Angle.text(ends.bendAngleRad(), 2));
    }

    /** One setting of the stop for each length that can be told apart. */
    private List<Tick> lengths() {
        Map<String, List<BillLine>> alike = new LinkedHashMap<>();
        for (BillLine line : desk.matter.bill().made()) {
            if (line.item() == Item.STRUT) {
                alike.computeIfAbsent(desk.cut(line.lengthMm().orElseThrow()), length -> new ArrayList<>())
                        .add(line);
            }
        }
        List<Tick> ticks = new ArrayList<>();
        alike.forEach((length, lines) -> ticks.add(CutChapter.tick(
                "cut-strut-" + lines.get(0).mark().toLowerCase(Locale.ROOT),
                "Stop at " + length + ": cut "
                        + lines.stream().map(StrutCuts::pieces).collect(Collectors.joining(" and ")))));
        return ticks;
    }

    private static String pieces(BillLine line) {
        String spare = line.spare() > 0 ? " and " + (int) line.spare() + " spare" : "";
        return (int) line.needed() + " of " + line.mark() + spare;
    }

    private Optional<Block> flattened() {
        if (!(desk.parts.joinery().ends() instanceof Ends.Flattened flat)) {
            return Optional.empty();
        }
        return Optional.of(new Ticks(
                "Ends",
                List.of(
                        CutChapter.tick(
                                "ends-flatten",
                                "Flatten both ends over " + desk.length(flat.flattenMm())
                                        + ", in one plane, the weld seam of the tube away from the fold."),
                        CutChapter.tick(
                                "ends-drill",
                                "Drill after flattening: " + desk.cut(flat.holeMm()) + " holes, their centres "
                                        + desk.length(flat.holeEdgeMm()) + " from the end."),
                        CutChapter.tick("ends-bend", "Bend each end by the angle of its kind, both the same way."),
                        CutChapter.tick("ends-finish", "Deburr the ends, and seal bare steel."))));
    }

    private Table rails() {
        List<Row> rows = new ArrayList<>();
        for (RailKind rail : desk.parts.railKinds()) {
            rows.add(Desk.row(
                    rail.mark(),
                    rail.mark(),
                    Integer.toString(rail.count()),
                    rail.panel(),
                    rail.strut(),
                    desk.cut(rail.longMm()),
                    desk.cut(rail.shortMm()),
                    setting(rail.start()),
                    setting(rail.end()),
                    Angle.text(rail.tiltRad(), 1)));
        }
        return new Table(
                "Rails, counter-clockwise round their panels seen from outside, lying on the outer face",
                List.of(
                        Desk.text("Rail"),
                        Desk.number("Count"),
                        Desk.text("Panel"),
                        Desk.text("Edge"),
                        Desk.number("Long point"),
                        Desk.number("Short point"),
                        Desk.text("Start: blade, gauge"),
                        Desk.text("End: blade, gauge"),
                        Desk.number("Tilt")),
                rows);
    }

    private static String setting(RailKind.End end) {
        return Angle.text(end.bladeTiltRad(), 1) + ", " + Angle.text(end.gaugeRad(), 1);
    }

    private List<Tick> settings() {
        Map<String, List<String>> cuts = new TreeMap<>();
        for (RailKind rail : desk.parts.railKinds()) {
            String count = " (" + rail.count() + ")";
            cuts.computeIfAbsent(setting(rail.start()), s -> new ArrayList<>()).add("start of " + rail.mark() + count);
            cuts.computeIfAbsent(setting(rail.end()), s -> new ArrayList<>()).add("end of " + rail.mark() + count);
        }
        List<Tick> ticks = new ArrayList<>();
        cuts.forEach((setting, ends) -> ticks.add(CutChapter.tick(
                "cut-rail-" + (ticks.size() + 1), "Blade, gauge " + setting + ": " + String.join(", ", ends))));
        return ticks;
    }

    private void addBars(List<Block> blocks, BarPlan plan) {
        List<Picture> pictures = StockPictures.ofBars(plan, desk.units);
        Table table = bars(plan);
        blocks.add(new Figure(pictures.get(0), pictures.get(0).title(), Optional.of(table)));
        pictures.stream()
                .skip(1)
                .forEach(picture -> blocks.add(new Figure(picture, picture.title(), Optional.empty())));
        blocks.add(new Text(
                "",
                List.of("Cut each bar from left to right, the longest piece first, and mark every piece before the next"
                        + " cut.")));
    }

    private Table bars(BarPlan plan) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        Map<String, CutBar> bars = new LinkedHashMap<>();
        for (CutBar bar : plan.bars()) {
            String cuts = bar.bar().lengthMm() + " "
                    + bar.cuts().stream().map(Cut::mark).collect(Collectors.joining(" "));
            counts.merge(cuts, 1, Integer::sum);
            bars.putIfAbsent(cuts, bar);
        }
        List<Row> rows = new ArrayList<>();
        bars.forEach((cuts, bar) -> rows.add(Desk.row(
                "",
                Integer.toString(counts.get(cuts)),
                desk.length(bar.bar().lengthMm()),
                JoinChapter.counted(bar.cuts().stream().map(Cut::mark).toList()),
                desk.length(bar.leftMm()))));
        return new Table(
                "Bars in the order of cutting",
                List.of(
                        Desk.number("Bars"),
                        Desk.number("Length"),
                        Desk.text("Cut in this order"),
                        Desk.number("Left")),
                rows);
    }
}
