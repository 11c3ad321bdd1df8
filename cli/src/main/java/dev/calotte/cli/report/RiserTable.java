package dev.calotte.cli.report;

import dev.calotte.parts.RiserWall;
import dev.calotte.parts.RiserWall.BottomPlate;
import dev.calotte.parts.RiserWall.TopPlate;
import dev.calotte.parts.RiserWall.Wall;
import dev.calotte.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;

/** The wall under a dome as a table of its own, {@code riser.csv}, and in the bill. */
final class RiserTable {

    private static final List<String> HEAD = List.of(
            "mark",
            "what",
            "count",
            "length_mm",
            "length",
            "left_mm",
            "right_mm",
            "top_mm",
            "inside_angles_deg",
            "mitres_deg",
            "slope_deg");

    private RiserTable() {}

    /** The columns that only some of the pieces have. */
    private record Row(String mark, String what, int count, double lengthMm, List<String> others) {}

    /** A row for each kind; cells that a sort of piece has not stay empty. */
    static String of(RiserWall wall, UnitSystem units) {
        List<Row> rows = new ArrayList<>();
        wall.walls().forEach(w -> rows.add(bay(w)));
        wall.uprights()
                .forEach(u -> rows.add(
                        new Row(u.mark(), "upright", u.count(), u.lengthMm(), List.of("", "", "", "", "", ""))));
        wall.bottomPlates().forEach(b -> rows.add(bottomPlate(b)));
        wall.topPlates().forEach(t -> rows.add(topPlate(t)));
        Csv csv = new Csv().row(HEAD);
        for (Row row : rows) {
            List<String> cells = new ArrayList<>(List.of(
                    row.mark, row.what, Tables.count(row.count), Tables.mm(row.lengthMm), units.length(row.lengthMm)));
            cells.addAll(row.others);
            csv.row(cells);
        }
        return csv.toString();
    }

    private static Row bay(Wall w) {
        List<String> sides = List.of(Tables.mm(w.leftMm()), Tables.mm(w.rightMm()), Tables.mm(w.topMm()), "", "", "");
        return new Row(w.mark(), "bay from outside", w.count(), w.widthMm(), sides);
    }

    private static Row bottomPlate(BottomPlate b) {
        double small = b.smallInsideRad();
        double large = b.largeInsideRad();
        String inside = Tables.degrees(small) + " " + Tables.degrees(large);
        String mitres = Tables.degrees(BottomPlate.mitreRad(small)) + " " + Tables.degrees(BottomPlate.mitreRad(large));
        return new Row(b.mark(), "bottom plate", b.count(), b.lengthMm(), List.of("", "", "", inside, mitres, ""));
    }

    private static Row topPlate(TopPlate t) {
        List<String> slope = List.of("", "", "", "", "", Tables.degrees(t.slopeRad()));
        return new Row(t.mark(), "top plate (base strut)", t.count(), t.lengthMm(), slope);
    }
}
