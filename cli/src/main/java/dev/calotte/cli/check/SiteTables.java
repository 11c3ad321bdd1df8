package dev.calotte.cli.check;

import dev.calotte.check.Table;
import dev.calotte.units.NumberText;
import dev.calotte.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;

/**
 * What the tables of the base, the wall below it and the openings should hold.
 *
 * @param root the record
 * @param units how lengths are written for people
 */
record SiteTables(Json root, UnitSystem units) {

    Table base() throws RecordException {
        List<String> header = List.of(
                "what",
                "mark",
                "next_mark",
                "from_axis_mm",
                "from_axis",
                "bearing_deg",
                "above_lowest_mm",
                "level_to_next_mm",
                "level_to_next",
                "straight_to_next_mm");
        List<List<String>> rows = new ArrayList<>();
        List<Json> stakes = root.list("base");
        for (int i = 0; i < stakes.size(); i++) {
            Json stake = stakes.get(i);
            rows.add(List.of(
                    "hub",
                    stake.text("mark"),
                    stakes.get((i + 1) % stakes.size()).text("mark"),
                    mm(stake, "fromAxis"),
                    Columns.length(units, stake.number("fromAxis")),
                    NumberText.fixed(stake.number("bearing"), 4),
                    mm(stake, "aboveLowest"),
                    mm(stake, "levelChord"),
                    Columns.length(units, stake.number("levelChord")),
                    mm(stake, "straightChord")));
        }
        for (Json diagonal : root.list("baseDiagonals")) {
            rows.add(List.of(
                    "diagonal",
                    diagonal.text("from"),
                    diagonal.text("to"),
                    "",
                    "",
                    "",
                    "",
                    mm(diagonal, "level"),
                    Columns.length(units, diagonal.number("level")),
                    mm(diagonal, "straight")));
        }
        return new Table(header, rows);
    }

    private static String mm(Json row, String key) throws RecordException {
        return NumberText.fixed(row.number(key), 3);
    }

    Table riser() throws RecordException {
        Json riser = root.at("riser");
        List<List<String>> rows = new ArrayList<>();
        rows.addAll(riserColumns("bay from outside", "width")
                .table(riser.list("walls"))
                .rows());
        rows.addAll(
                riserColumns("upright", "length").table(riser.list("uprights")).rows());
        rows.addAll(riserColumns("bottom plate", "length")
                .table(riser.list("plates"))
                .rows());
        Table last = riserColumns("top plate (base strut)", "length").table(riser.list("topPlates"));
        rows.addAll(last.rows());
        return new Table(last.header(), rows);
    }

    private Columns riserColumns(String what, String length) {
        return new Columns()
                .text("mark", "mark")
                .with("what", row -> what)
                .whole("count", "count")
                .fixed("length_mm", length, 3)
                .with("length", Columns.length(units, length))
                .fixed("left_mm", "left", 3)
                .fixed("right_mm", "right", 3)
                .fixed("top_mm", "top", 3)
                .with("inside_angles_deg", row -> angles(row, "insideAngles"))
                .with("mitres_deg", row -> angles(row, "mitres"))
                .fixed("slope_deg", "slope", 4);
    }

    private static String angles(Json row, String key) throws RecordException {
        return row.has(key) ? Columns.joined(row.numbers(key), 4) : "";
    }

    Table openings() throws RecordException {
        List<List<String>> rows = new ArrayList<>();
        for (Json opening : root.list("openings")) {
            String name = opening.text("name");
            add(rows, name, "panel left out", opening.texts("removedPanels"));
            add(rows, name, "strut left out", opening.texts("removedStruts"));
            add(rows, name, "hub left out", opening.texts("removedHubs"));
            add(rows, name, "free edge", opening.texts("freeEdges"));
            add(rows, name, "strut without a panel", opening.texts("bareStruts"));
            for (Json end : opening.list("ends")) {
                rows.add(List.of(
                        name,
                        "strut end",
                        end.text("strut"),
                        end.text("hub"),
                        mm(end, "length"),
                        Columns.length(units, end.number("length"))));
            }
        }
        return new Table(List.of("opening", "what", "mark", "at_hub", "length_mm", "length"), rows);
    }

    private static void add(List<List<String>> rows, String name, String what, List<String> marks) {
        marks.forEach(mark -> rows.add(List.of(name, what, mark, "", "", "")));
    }
}
