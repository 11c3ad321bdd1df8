package dev.calotte.cli.report;

import dev.calotte.assembly.SettingOut;
import dev.calotte.assembly.SettingOut.Diagonal;
import dev.calotte.assembly.SettingOut.Stake;
import dev.calotte.units.UnitSystem;

/** The table {@code base.csv}: a row for each base hub, then the long diagonals to check by. */
final class BaseTable {

    private BaseTable() {}

    static String of(SettingOut out, UnitSystem units) {
        Csv csv = new Csv()
                .row(
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
        for (int i = 0; i < out.stakes().size(); i++) {
            Stake stake = out.stakes().get(i);
            csv.row(
                    "hub",
                    stake.mark(),
                    out.stakes().get((i + 1) % out.stakes().size()).mark(),
                    Tables.mm(stake.fromAxisMm()),
                    units.length(stake.fromAxisMm()),
                    Tables.degrees(stake.bearingRad()),
                    Tables.mm(stake.aboveLowestMm()),
                    Tables.mm(stake.levelChordMm()),
                    units.length(stake.levelChordMm()),
                    Tables.mm(stake.straightChordMm()));
        }
        for (Diagonal d : out.diagonals()) {
            String level = units.length(d.levelMm());
            csv.row(
                    "diagonal",
                    d.from(),
                    d.to(),
                    "",
                    "",
                    "",
                    "",
                    Tables.mm(d.levelMm()),
                    level,
                    Tables.mm(d.straightMm()));
        }
        return csv.toString();
    }
}
