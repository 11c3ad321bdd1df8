package dev.calotte.book;

import dev.calotte.assembly.Accuracy;
import dev.calotte.assembly.SettingOut;
import dev.calotte.document.Book.Block;
import dev.calotte.document.Book.Chapter;
import dev.calotte.document.Book.Row;
import dev.calotte.document.Book.Table;
import dev.calotte.document.Book.Text;
import dev.calotte.document.Book.Tick;
import dev.calotte.document.Book.Ticks;
import dev.calotte.dome.Hub;
import dev.calotte.units.NumberText;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** What to measure once it stands, and what errors do. */
final class CheckChapter {

    private final Desk desk;

    CheckChapter(Desk desk) {
        this.desk = desk;
    }

    Chapter chapter() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(heights());
        SettingOut out = SettingOut.of(desk.parts);
        if (!out.diagonals().isEmpty()) {
            blocks.add(diagonals(out));
        }
        blocks.add(new Ticks("Checked", checks()));
        Accuracy accuracy = Accuracy.of(desk.parts, desk.parts.joinery().cutToleranceMm());
        blocks.add(new Text("What errors do", words(accuracy)));
        blocks.add(dimples(accuracy));
        return new Chapter(
                "Check",
                "A long tape, a level or a water hose, this page.",
                blocks,
                "What stands there is what was drawn.");
    }

    private Table heights() {
        SortedMap<Integer, List<Hub>> rows = new TreeMap<>();
        desk.dome
                .hubs()
                .forEach(hub -> rows.computeIfAbsent(hub.row(), row -> new ArrayList<>())
                        .add(hub));
        double lowest = desk.dome.hubs().stream()
                .mapToDouble(hub -> hub.position().getZ())
                .min()
                .orElse(0);
        List<Row> table = new ArrayList<>();
        rows.forEach((row, hubs) -> table.add(Desk.row(
                "",
                Integer.toString(row),
                Integer.toString(hubs.size()),
                range(hubs.stream()
                        .mapToDouble(hub -> hub.position().getZ() - lowest)
                        .summaryStatistics()),
                range(hubs.stream()
                        .mapToDouble(hub ->
                                Math.sqrt(hub.position().getX() * hub.position().getX()
                                        + hub.position().getY() * hub.position().getY()))
                        .summaryStatistics()))));
        return new Table(
                "Nominal heights and distances, hub centres",
                List.of(
                        Desk.text("Row of hubs"),
                        Desk.number("Hubs"),
                        Desk.number("Over the lowest hub"),
                        Desk.number("From the axis")),
                table);
    }

    private String range(DoubleSummaryStatistics values) {
        String least = desk.length(values.getMin());
        String most = desk.length(values.getMax());
        return least.equals(most) ? least : least + " to " + most;
    }

    private Table diagonals(SettingOut out) {
        List<Row> rows = out.diagonals().stream()
                .map(d -> Desk.row("", d.from(), d.to(), desk.length(d.levelMm()), desk.length(d.straightMm())))
                .toList();
        return new Table(
                "Diagonals of the base",
                List.of(
                        Desk.text("From"),
                        Desk.text("to"),
                        Desk.number("Along the level"),
                        Desk.number("Node to node")),
                rows);
    }

    private List<Tick> checks() {
        List<Tick> ticks = new ArrayList<>();
        if (!desk.dome.baseRing().isEmpty()) {
            ticks.add(CutChapter.tick(
                    "check-radius", "Base hubs: distance from the axis measured at five of them, and all diagonals."));
        }
        ticks.add(CutChapter.tick("check-heights", "Heights measured at five hubs round the dome, and at the crown."));
        ticks.add(CutChapter.tick("check-dimples", "Walked round it once: no hub stands in or out against the light."));
        ticks.add(CutChapter.tick("check-bolts", "Every bolt tried with the wrench."));
        ticks.add(CutChapter.tick("check-wind", "After the first wind: inspected, and tightened again."));
        return ticks;
    }

    private List<String> words(Accuracy accuracy) {
        List<String> words = new ArrayList<>();
        words.add("Struts round a hub that are all wrong by " + desk.units.smallLength(accuracy.toleranceMm())
                + " push it in or out by what the table says. A dimple therefore means a few wrong struts, or a swapped"
                + " one: look for pairs easily confused first.");
        accuracy.baseRadiusMm()
                .ifPresent(mm -> words.add("Base struts all wrong by as much make the base ring's radius wrong by "
                        + desk.units.smallLength(mm) + "."));
        return words;
    }

    private Table dimples(Accuracy accuracy) {
        List<Row> rows = accuracy.dimples().stream()
                .map(dimple -> Desk.row(
                        dimple.mark(),
                        dimple.mark(),
                        NumberText.fixed(dimple.factor(), 1) + " times",
                        desk.units.smallLength(dimple.heightMm())))
                .toList();
        return new Table(
                "In or out by",
                List.of(Desk.text("Strut"), Desk.number("Error grows"), Desk.number("Hub moves by")),
                rows);
    }
}
