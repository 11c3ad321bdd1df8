package dev.calotte.cli.check;

import dev.calotte.check.RecordedCover;
import dev.calotte.check.Table;
import dev.calotte.units.NumberText;
import dev.calotte.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;

/**
 * What the tables of patterns, stock and the bill should hold.
 *
 * @param root the record
 */
record StockTables(Json root) {

    Table patterns(List<RecordedCover> covers) throws RecordException {
        List<List<String>> rows = new ArrayList<>();
        Table last = patternColumns(new RecordedCover("", 0, 0, List.of(), List.of(), false))
                .table(List.of());
        List<Json> recorded = root.list("covers");
        for (int i = 0; i < covers.size(); i++) {
            rows.addAll(patternColumns(covers.get(i))
                    .table(recorded.get(i).list("patterns"))
                    .rows());
        }
        return new Table(last.header(), rows);
    }

    private static Columns patternColumns(RecordedCover cover) {
        return new Columns()
                .with("cover", row -> cover.name())
                .text("mark", "mark")
                .text("panel", "panelKind")
                .whole("count", "count")
                .text("mirror", "mirror")
                .with("struts_ccw", row -> sides(row, side -> side.text("strut")))
                .each("net_altitudes_mm", "netAltitudes", 3)
                .each("cut_altitudes_mm", "cutAltitudes", 3)
                .with("growths_mm", row -> sides(row, side -> NumberText.fixed(side.number("growth"), 3)))
                .with("allowances_mm", row -> sides(row, side -> NumberText.fixed(side.number("allowance"), 3)))
                .with("bevels_deg", row -> sides(row, side -> NumberText.fixed(side.number("bevel"), 4)))
                .with("laps", row -> sides(row, side -> side.text("lap")))
                .with(
                        "narrowest_width_mm",
                        row -> NumberText.fixed(piece(cover, row).blank().narrowestWidth(), 3))
                .with(
                        "area_m2",
                        row -> NumberText.fixed(piece(cover, row).blank().area() / 1e6, 6))
                .with("holes", row -> Integer.toString(row.list("holes").size()))
                .each("seams_mm", "seams", 3)
                .with("fits", row -> row.flag("fits") ? "yes" : "no")
                .fixed("over_by_mm", "overBy", 3);
    }

    private static RecordedCover.Piece piece(RecordedCover cover, Json row) throws RecordException {
        String mark = row.text("mark");
        return cover.pieces().stream()
                .filter(piece -> piece.mark().equals(mark))
                .findFirst()
                .orElseThrow();
    }

    private static String sides(Json row, Columns.Cell cell) throws RecordException {
        List<String> texts = new ArrayList<>();
        for (Json side : row.list("sides")) {
            texts.add(cell.of(side));
        }
        return String.join(" ", texts);
    }

    Table sheets() throws RecordException {
        List<String> header = List.of(
                "cover",
                "sheet",
                "length_mm",
                "width_mm",
                "pattern",
                "panel",
                "x_mm",
                "y_mm",
                "rotation_deg",
                "face_down");
        List<List<String>> rows = new ArrayList<>();
        for (Json cover : root.list("covers")) {
            List<Json> sheets = cover.has("plan") ? cover.at("plan").list("sheets") : List.of();
            for (int i = 0; i < sheets.size(); i++) {
                for (Json part : sheets.get(i).list("parts")) {
                    rows.add(List.of(
                            cover.text("name"),
                            Integer.toString(i + 1),
                            NumberText.fixed(sheets.get(i).number("length"), 3),
                            NumberText.fixed(sheets.get(i).number("width"), 3),
                            part.text("mark"),
                            part.text("panel"),
                            NumberText.fixed(part.number("x"), 3),
                            NumberText.fixed(part.number("y"), 3),
                            NumberText.fixed(part.number("rotation"), 4),
                            part.flag("mirrored") ? "yes" : "no"));
                }
            }
        }
        return new Table(header, rows);
    }

    Table bars() throws RecordException {
        List<String> header = List.of("bar", "bar_length_mm", "cut", "mark", "length_mm", "left_mm");
        List<List<String>> rows = new ArrayList<>();
        List<Json> bars = root.at("bars").list("bars");
        for (int i = 0; i < bars.size(); i++) {
            List<Json> cuts = bars.get(i).list("cuts");
            for (int cut = 0; cut < cuts.size(); cut++) {
                rows.add(List.of(
                        Integer.toString(i + 1),
                        NumberText.fixed(bars.get(i).number("length"), 3),
                        Integer.toString(cut + 1),
                        cuts.get(cut).text("mark"),
                        NumberText.fixed(cuts.get(cut).number("length"), 3),
                        NumberText.fixed(bars.get(i).number("left"), 3)));
            }
        }
        return new Table(header, rows);
    }

    Table bill() throws RecordException {
        return new Columns()
                .text("item", "item")
                .text("mark", "mark")
                .with("needed", row -> amount(row, "needed"))
                .with("spare", row -> amount(row, "spare"))
                .text("unit", "unit")
                .fixed("length_mm", "length", 3)
                .fixed("width_mm", "width", 3)
                .fixed("area_m2", "area", 6)
                .with("total_m", StockTables::totalMetres)
                .with("total_m2", row -> row.has("area") ? NumberText.fixed(row.number("area") * amount(row), 6) : "")
                .with("price_each", row -> row.has("price") ? Columns.ANY : "")
                .fixed("price", "price", 2)
                .fixed("mass_kg", "mass", 3)
                .table(root.list("bill"));
    }

    private static boolean isRoll(Json row) throws RecordException {
        return row.text("unit").equals("m");
    }

    private static String amount(Json row, String key) throws RecordException {
        return isRoll(row) ? NumberText.fixed(row.number(key), 3) : Integer.toString((int) row.number(key));
    }

    private static double amount(Json row) throws RecordException {
        return row.number("needed") + row.number("spare");
    }

    private static String totalMetres(Json row) throws RecordException {
        if (isRoll(row)) {
            return NumberText.fixed(amount(row), 3);
        }
        return row.has("length") ? NumberText.fixed(row.number("length") * amount(row) / 1000, 3) : "";
    }

    Table rails(UnitSystem units) throws RecordException {
        return new Columns()
                .text("mark", "mark")
                .whole("count", "count")
                .text("strut", "strutKind")
                .text("panel", "panelKind")
                .fixed("long_point_mm", "longPoint", 3)
                .with("long_point", Columns.length(units, "longPoint"))
                .fixed("short_point_mm", "shortPoint", 3)
                .with("short_point", Columns.length(units, "shortPoint"))
                .with("top_outer_mm", row -> arris(row, 0))
                .with("top_inner_mm", row -> arris(row, 1))
                .with("bottom_outer_mm", row -> arris(row, 2))
                .with("bottom_inner_mm", row -> arris(row, 3))
                .fixed("tilt_deg", "tilt", 4)
                .with("start_blade_tilt_deg", row -> saw(row, "start", "bladeTilt"))
                .with("start_gauge_deg", row -> saw(row, "start", "gauge"))
                .with("end_blade_tilt_deg", row -> saw(row, "end", "bladeTilt"))
                .with("end_gauge_deg", row -> saw(row, "end", "gauge"))
                .table(root.listIfAny("rails"));
    }

    private static String arris(Json row, int place) throws RecordException {
        return NumberText.fixed(row.numbers("arrises", 4).get(place), 3);
    }

    private static String saw(Json row, String end, String key) throws RecordException {
        return NumberText.fixed(row.at(end).number(key), 4);
    }
}
