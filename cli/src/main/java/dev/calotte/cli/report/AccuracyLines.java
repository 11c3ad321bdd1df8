package dev.calotte.cli.report;

import dev.calotte.assembly.Accuracy;
import dev.calotte.assembly.Accuracy.Dimple;
import dev.calotte.units.UnitSystem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What errors do to a dome, on its page. */
final class AccuracyLines {

    private AccuracyLines() {}

    /** One line about hubs, and one about the base ring if there is one. */
    static List<String> of(Accuracy accuracy, UnitSystem units) {
        Dimple most = accuracy.dimples().stream()
                .max(Comparator.comparingDouble(Dimple::factor))
                .orElseThrow();
        double error = accuracy.toleranceMm();
        List<String> lines = new ArrayList<>();
        lines.add("");
        lines.add("Struts wrong by " + units.smallLength(error) + " move a hub in or out by up to about "
                + units.smallLength(most.heightMm()) + " (" + most.mark() + ");");
        accuracy.baseRadiusMm()
                .ifPresent(mm -> lines.add("  base struts all wrong by " + units.smallLength(error)
                        + " make the base ring's radius wrong by " + units.smallLength(mm)));
        return lines;
    }
}
