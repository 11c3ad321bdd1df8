package dev.calotte.cli.report;

import dev.calotte.assembly.OpeningReport;
import dev.calotte.parts.Parts;
import java.util.ArrayList;
import java.util.List;

/** The openings of a dome on its page. */
final class OpeningLines {

    private OpeningLines() {}

    /** A line for each opening and its count of members; nothing where there is none. */
    static List<String> of(Parts parts) {
        List<String> lines = new ArrayList<>();
        for (OpeningReport report : OpeningReport.of(parts)) {
            lines.add("");
            lines.addAll(ShowPage.wrapped(0, "Opening " + report.name() + ": " + taken(report)));
            lines.addAll(ShowPage.wrapped(2, left(report)));
            lines.addAll(ShowPage.wrapped(2, report.redundancy()));
        }
        return lines;
    }

    private static String taken(OpeningReport report) {
        return count(report.removedPanels().size(), "panel") + ", "
                + count(report.removedStruts().size(), "strut") + " and "
                + count(report.removedHubs().size(), "hub") + " left out";
    }

    private static String left(OpeningReport report) {
        return count(report.freeEdges().size(), "free edge") + ", "
                + count(report.bareStruts().size(), "strut") + " without a panel, "
                + count(report.ends().size(), "strut end") + " on "
                + count(report.rimHubs().size(), "hub") + " round it: tables/openings.csv of `make`";
    }

    private static String count(int count, String thing) {
        return count + " " + thing + (count == 1 ? "" : "s");
    }
}
