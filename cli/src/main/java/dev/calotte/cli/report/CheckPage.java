package dev.calotte.cli.report;

import dev.calotte.check.Finding;
import dev.calotte.cli.check.CheckResult;
import dev.calotte.units.NumberText;
import java.util.ArrayList;
import java.util.List;

/** What {@code calotte check} found, as lines for a terminal. */
public final class CheckPage {

    private static final int MOST = 40;
    private static final int FINEST = 9;

    private CheckPage() {}

    /**
     * The page.
     *
     * @param result what was found
     * @return its lines
     */
    public static List<String> of(CheckResult result) {
        List<String> lines = new ArrayList<>();
        lines.add(result.title().isEmpty() ? "(no title)" : result.title());
        lines.add("Files read     " + result.files());
        if (result.again() > 0) {
            lines.add("Made again     " + result.again() + " from the brief, compared byte by byte");
        }
        lines.add("Put together   " + result.pieces());
        if (!result.mismatch().where().isEmpty()) {
            lines.add("Largest gap    " + NumberText.trimmed(result.mismatch().mm(), FINEST) + " mm, "
                    + result.mismatch().where());
        }
        result.notRead().forEach(what -> lines.add("Not read       " + what));
        lines.add("");
        lines.add(
                switch (result.findings().size()) {
                    case 0 -> "All of it agrees.";
                    case 1 -> "One thing is wrong:";
                    default -> result.findings().size() + " things are wrong:";
                });
        result.findings().stream().limit(MOST).forEach(finding -> add(lines, finding));
        if (result.findings().size() > MOST) {
            lines.add("... and " + (result.findings().size() - MOST) + " more.");
        }
        return lines;
    }

    private static void add(List<String> lines, Finding finding) {
        String place = finding.place().isEmpty() ? "" : ", " + finding.place();
        lines.add(finding.file() + place + ": " + finding.what());
        lines.add("  " + finding.mend());
    }
}
