package dev.calotte.cli.report;

import dev.calotte.parts.Parts;
import dev.calotte.parts.RailKind;
import dev.calotte.units.Angle;
import dev.calotte.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;

/**
 * The kinds of mitred rails. Seen from outside the dome a rail runs counter-clockwise round its panel from its start to
 * its end; the saw is set from a square cut, the rail lying on its outer face.
 *
 * @param parts the parts
 * @param units how lengths are written for people
 */
record RailTable(Parts parts, UnitSystem units) {

    @Override
    public String toString() {
        Csv csv = new Csv()
                .row(
                        "mark",
                        "count",
                        "strut",
                        "panel",
                        "long_point_mm",
                        "long_point",
                        "short_point_mm",
                        "short_point",
                        "top_outer_mm",
                        "top_inner_mm",
                        "bottom_outer_mm",
                        "bottom_inner_mm",
                        "tilt_deg",
                        "start_blade_tilt_deg",
                        "start_gauge_deg",
                        "end_blade_tilt_deg",
                        "end_gauge_deg");
        parts.railKinds().forEach(rail -> csv.row(row(rail)));
        return csv.toString();
    }

    private List<String> row(RailKind rail) {
        List<String> cells = new ArrayList<>(List.of(
                rail.mark(),
                Integer.toString(rail.count()),
                rail.strut(),
                rail.panel(),
                Tables.mm(rail.longMm()),
                units.length(rail.longMm()),
                Tables.mm(rail.shortMm()),
                units.length(rail.shortMm())));
        rail.arrisesMm().forEach(arris -> cells.add(Tables.mm(arris)));
        cells.addAll(List.of(
                Tables.degrees(rail.tiltRad()),
                Tables.degrees(rail.start().bladeTiltRad()),
                Tables.degrees(rail.start().gaugeRad()),
                Tables.degrees(rail.end().bladeTiltRad()),
                Tables.degrees(rail.end().gaugeRad())));
        return cells;
    }

    /** The first kinds for the terminal. */
    TextTable page(int most) {
        TextTable table = new TextTable(
                0, "mark", "count", "edge", "panel", "long point", "short point", "blade", "gauge", "blade", "gauge");
        parts.railKinds().stream()
                .limit(most)
                .forEach(rail -> table.row(
                        rail.mark(),
                        Integer.toString(rail.count()),
                        rail.strut(),
                        rail.panel(),
                        units.length(rail.longMm(), 1),
                        units.length(rail.shortMm(), 1),
                        Angle.text(rail.start().bladeTiltRad(), 1),
                        Angle.text(rail.start().gaugeRad(), 1),
                        Angle.text(rail.end().bladeTiltRad(), 1),
                        Angle.text(rail.end().gaugeRad(), 1)));
        return table;
    }
}
