package dev.calotte.cli.report;

import dev.calotte.assembly.OpeningReport;
import dev.calotte.parts.Parts;
import dev.calotte.units.UnitSystem;
import java.util.List;

/** The table {@code openings.csv}: what each opening took, and then what struts end on its rim, hub by hub. */
final class OpeningTable {

    private OpeningTable() {}

    static String of(Parts parts, UnitSystem units) {
        Csv csv = new Csv().row("opening", "what", "mark", "at_hub", "length_mm", "length");
        for (OpeningReport report : OpeningReport.of(parts)) {
            rows(csv, report.name(), "panel left out", report.removedPanels());
            rows(csv, report.name(), "strut left out", report.removedStruts());
            rows(csv, report.name(), "hub left out", report.removedHubs());
            rows(csv, report.name(), "free edge", report.freeEdges());
            rows(csv, report.name(), "strut without a panel", report.bareStruts());
            report.ends()
                    .forEach(end -> csv.row(
                            report.name(),
                            "strut end",
                            end.strut(),
                            end.hub(),
                            Tables.mm(end.lengthMm()),
                            units.length(end.lengthMm())));
        }
        return csv.toString();
    }

    private static void rows(Csv csv, String name, String what, List<String> marks) {
        marks.forEach(mark -> csv.row(name, what, mark, "", "", ""));
    }
}
