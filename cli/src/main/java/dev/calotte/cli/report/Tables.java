package dev.calotte.cli.report;

import dev.calotte.assembly.SettingOut;
import dev.calotte.cli.Design;
import dev.calotte.geometry.Triangle;
import dev.calotte.parts.HubKind;
import dev.calotte.parts.PanelKind;
import dev.calotte.parts.Parts;
import dev.calotte.units.Angle;
import dev.calotte.units.NumberText;
import dev.calotte.units.UnitSystem;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * The tables of a design as comma-separated values, a row for each kind, in the hub schedule for each hub. Columns whose name ends in {@code _mm},
 * {@code _deg} or {@code _m2} are numbers; beside them stands the length as the brief's units write it.
 */
public final class Tables {

    private final Parts parts;
    private final UnitSystem units;

    private Tables(Design design) {
        this.parts = design.parts();
        this.units = design.project().units();
    }

    /**
     * Makes the tables.
     *
     * @param design what to tabulate
     * @return the text of each file by its name, for example {@code struts.csv}
     */
    public static Map<String, String> of(Design design) {
        Tables tables = new Tables(design);
        Map<String, String> files = new LinkedHashMap<>();
        files.put("struts.csv", new StrutTable(tables.parts, tables.units).toString());
        files.put("panels.csv", tables.panels());
        files.put("hubs.csv", tables.hubs());
        files.put("hub-schedule.csv", new HubSchedule(tables.parts).toString());
        if (!tables.parts.railKinds().isEmpty()) {
            files.put("rails.csv", new RailTable(tables.parts, tables.units).toString());
        }
        if (!design.covers().isEmpty()) {
            files.put("patterns.csv", PatternTable.of(design.covers()));
        }
        if (design.covers().stream().anyMatch(cover -> cover.plan().isPresent())) {
            files.put("sheets.csv", PlanTables.sheets(design.covers()));
        }
        design.bars().ifPresent(plan -> files.put("bars.csv", PlanTables.bars(plan)));
        files.put("bill.csv", BillTable.of(design.bill()));
        if (!design.dome().baseRing().isEmpty()) {
            files.put(
                    "base.csv",
                    BaseTable.of(SettingOut.of(design.parts()), design.project().units()));
        }
        design.riser()
                .ifPresent(wall -> files.put(
                        "riser.csv", RiserTable.of(wall, design.project().units())));
        if (!design.dome().openings().isEmpty()) {
            files.put(
                    "openings.csv",
                    OpeningTable.of(design.parts(), design.project().units()));
        }
        return files;
    }

    private String panels() {
        Csv csv = new Csv()
                .row(
                        "mark",
                        "hand",
                        "mirror",
                        "count",
                        "struts",
                        "short_mm",
                        "middle_mm",
                        "long_mm",
                        "altitude_short_mm",
                        "altitude_middle_mm",
                        "altitude_long_mm",
                        "narrowest_width",
                        "angle_short_deg",
                        "angle_middle_deg",
                        "angle_long_deg",
                        "area_m2");
        parts.panelKinds().forEach(kind -> csv.row(panel(kind)));
        return csv.toString();
    }

    private List<String> panel(PanelKind kind) {
        Triangle t = kind.triangle();
        return List.of(
                kind.mark(),
                word(kind),
                kind.twin().orElse(""),
                Integer.toString(kind.count()),
                kind.struts().stream().map(n -> "S" + n).collect(Collectors.joining(" ")),
                mm(t.a()),
                mm(t.b()),
                mm(t.c()),
                mm(t.altitude(0)),
                mm(t.altitude(1)),
                mm(t.altitude(2)),
                units.length(t.narrowestWidth()),
                degrees(t.angleRad(0)),
                degrees(t.angleRad(1)),
                degrees(t.angleRad(2)),
                squareMetres(t.area()));
    }

    private static String word(PanelKind kind) {
        return switch (kind.hand()) {
            case LEFT -> "left";
            case RIGHT -> "right";
            case NONE -> "none";
        };
    }

    private String hubs() {
        Csv csv = new Csv().row("mark", "mirror", "count", "base", "struts_ccw", "gaps_deg", "axial_angles_deg");
        for (HubKind kind : parts.hubKinds()) {
            csv.row(
                    kind.mark(),
                    kind.twin().orElse(""),
                    Integer.toString(kind.count()),
                    kind.open() ? "yes" : "no",
                    String.join(" ", kind.strutMarks()),
                    kind.gapsRad().stream().map(Tables::degrees).collect(Collectors.joining(" ")),
                    kind.axialAnglesRad().stream().map(Tables::degrees).collect(Collectors.joining(" ")));
        }
        return csv.toString();
    }

    static String count(int count) {
        return Integer.toString(count);
    }

    static String mm(double mm) {
        return NumberText.fixed(mm, 3);
    }

    static String metres(double mm) {
        return NumberText.fixed(mm / 1000, 3);
    }

    static String squareMetres(double mm2) {
        return NumberText.fixed(mm2 / 1e6, 6);
    }

    static String degrees(double rad) {
        return NumberText.fixed(Angle.degrees(rad), 4);
    }
}
