package dev.calotte.cli.check;

import dev.calotte.check.Around;
import dev.calotte.check.RecordedDome;
import dev.calotte.check.Table;
import dev.calotte.units.NumberText;
import dev.calotte.units.UnitSystem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What the tables of struts, panels and hubs should hold.
 *
 * @param root the record
 * @param dome what it says of the dome
 */
record FrameTables(Json root, RecordedDome dome) {

    static UnitSystem units(Json root) throws RecordException {
        try {
            return UnitSystem.valueOf(root.text("units").toUpperCase(Locale.ROOT));
        } catch (IllegalArgumentException e) {
            throw new RecordException("units is neither metric nor imperial");
        }
    }

    Table struts() throws RecordException {
        UnitSystem units = units(root);
        return new Columns()
                .text("mark", "mark")
                .whole("count", "count")
                .fixed("length_mm", "length", 3)
                .with("length", Columns.length(units, "length"))
                .fixed("cut_length_mm", "cutLength", 3)
                .with("cut_length", Columns.length(units, "cutLength"))
                .fixed("chord_factor", "chordFactor", 9)
                .fixed("axial_angle_deg", "axialAngle", 4)
                .with("dihedrals_deg", FrameTables::dihedrals)
                .with(
                        "gap_small_mm",
                        row -> NumberText.fixed(row.numbers("gaps", 2).get(0), 3))
                .with(
                        "gap_large_mm",
                        row -> NumberText.fixed(row.numbers("gaps", 2).get(1), 3))
                .with(
                        "merge_error_mm",
                        row -> dome.strutKinds().stream().allMatch(k -> k.mergeError() == 0)
                                ? Columns.ANY
                                : NumberText.fixed(row.number("mergeError"), 3))
                .fixed("hole_to_hole_mm", "holeToHole", 3)
                .with("hole_to_hole", Columns.length(units, "holeToHole"))
                .fixed("hole_from_end_mm", "holeFromEnd", 3)
                .fixed("bend_from_end_mm", "bendFromEnd", 3)
                .fixed("bend_angle_deg", "bendAngle", 4)
                .fixed("outside_chord_mm", "outsideChord", 3)
                .table(root.list("strutKinds"));
    }

    private static String dihedrals(Json row) throws RecordException {
        List<String> texts = new ArrayList<>();
        for (Json dihedral : row.list("dihedrals")) {
            texts.add(NumberText.fixed(dihedral.number("angle"), 4) + " x " + dihedral.whole("count"));
        }
        return String.join("; ", texts);
    }

    Table panels(Around around) throws RecordException {
        UnitSystem units = units(root);
        return new Columns()
                .text("mark", "mark")
                .text("hand", "hand")
                .text("mirror", "mirror")
                .whole("count", "count")
                .with("struts", row -> struts(around, row.text("mark")))
                .with("short_mm", row -> nth(row, "sides", 0))
                .with("middle_mm", row -> nth(row, "sides", 1))
                .with("long_mm", row -> nth(row, "sides", 2))
                .with("altitude_short_mm", row -> nth(row, "altitudes", 0))
                .with("altitude_middle_mm", row -> nth(row, "altitudes", 1))
                .with("altitude_long_mm", row -> nth(row, "altitudes", 2))
                .with("narrowest_width", Columns.length(units, "narrowest"))
                .with("angle_short_deg", row -> degrees(row, 0))
                .with("angle_middle_deg", row -> degrees(row, 1))
                .with("angle_long_deg", row -> degrees(row, 2))
                .fixed("area_m2", "area", 6)
                .table(root.list("panelKinds"));
    }

    private static String nth(Json row, String key, int place) throws RecordException {
        return NumberText.fixed(row.numbers(key, 3).get(place), 3);
    }

    private static String degrees(Json row, int place) throws RecordException {
        return NumberText.fixed(row.numbers("angles", 3).get(place), 4);
    }

    /** The struts below the sides of a panel of the kind; where kinds differ by their gaps only any will do. */
    private String struts(Around around, String kind) {
        Map<String, Double> lengths = new TreeMap<>();
        dome.strutKinds().forEach(strut -> lengths.put(strut.mark(), strut.length()));
        boolean told = lengths.values().stream().distinct().count() == lengths.size();
        Optional<RecordedDome.Panel> panel =
                dome.panels().stream().filter(p -> p.kind().equals(kind)).findFirst();
        return told && panel.isPresent() && !dome.opened()
                ? String.join(
                        " ",
                        around.kinds(panel.get()).stream()
                                .sorted(Comparator.comparingDouble(mark -> lengths.getOrDefault(mark, 0.0)))
                                .toList())
                : Columns.ANY;
    }

    Table hubs() throws RecordException {
        return new Columns()
                .text("mark", "mark")
                .text("mirror", "mirror")
                .whole("count", "count")
                .with("base", row -> row.flag("open") ? "yes" : "no")
                .texts("struts_ccw", "struts")
                .each("gaps_deg", "gaps", 4)
                .each("axial_angles_deg", "axialAngles", 4)
                .table(root.list("hubKinds"));
    }

    /** A hub's struts may be listed from any place that its kind allows: that of the table is taken where it is one. */
    Table schedule(Around around, Table seen) throws RecordException {
        Map<String, Json> kinds = new TreeMap<>();
        for (Json kind : root.list("hubKinds")) {
            kinds.put(kind.text("mark"), kind);
        }
        Map<String, List<String>> seenOf = new TreeMap<>();
        seen.rows().forEach(row -> seenOf.put(row.get(0), row));
        List<List<String>> rows = new ArrayList<>();
        for (RecordedDome.Hub hub : dome.hubs()) {
            List<List<String>> ways = ways(hub, kinds.get(hub.kind()), around);
            List<String> there = seenOf.getOrDefault(hub.mark(), List.of());
            rows.add(ways.stream()
                    .filter(way -> there.size() > 6 && way.get(6).equals(there.get(6)))
                    .findFirst()
                    .orElse(ways.get(0)));
        }
        List<String> header = List.of(
                "mark",
                "kind",
                "row",
                "place",
                "base",
                "strut_count",
                "struts_ccw",
                "gaps_deg",
                "axial_angles_deg",
                "panels_ccw",
                "bolt_length_mm");
        return new Table(header, rows);
    }

    private static List<List<String>> ways(RecordedDome.Hub hub, Json kind, Around around) throws RecordException {
        if (kind == null) {
            throw new RecordException("there is no kind of hubs " + hub.kind());
        }
        List<Around.Spoke> spokes = around.struts(hub.vertex());
        List<List<String>> ways = new ArrayList<>();
        for (int turn = 0; turn < Math.max(1, spokes.size()); turn++) {
            List<Around.Spoke> turned = new ArrayList<>(spokes.subList(Math.min(turn, spokes.size()), spokes.size()));
            turned.addAll(spokes.subList(0, turn));
            List<String> strutKinds = turned.stream().map(s -> s.strut().kind()).toList();
            if (strutKinds.equals(kind.texts("struts")) || (ways.isEmpty() && turn == spokes.size() - 1)) {
                ways.add(row(hub, kind, turned, around));
            }
        }
        return ways;
    }

    private static List<String> row(RecordedDome.Hub hub, Json kind, List<Around.Spoke> spokes, Around around)
            throws RecordException {
        List<String> panels = new ArrayList<>();
        for (int i = 0; i < spokes.size(); i++) {
            around.panel(
                            hub.vertex(),
                            spokes.get(i).strut(),
                            spokes.get((i + 1) % spokes.size()).strut())
                    .ifPresent(panels::add);
        }
        int point = hub.mark().lastIndexOf('.');
        return List.of(
                hub.mark(),
                hub.kind(),
                Integer.toString(hub.row()),
                hub.mark().substring(point + 1).replaceFirst("^0+", ""),
                kind.flag("open") ? "yes" : "no",
                Integer.toString(spokes.size()),
                String.join(" ", spokes.stream().map(s -> s.strut().mark()).toList()),
                Columns.joined(kind.numbers("gaps"), 4),
                Columns.joined(kind.numbers("axialAngles"), 4),
                String.join(" ", panels),
                kind.has("boltStack") ? NumberText.fixed(kind.at("boltStack").number("length"), 3) : "");
    }
}
