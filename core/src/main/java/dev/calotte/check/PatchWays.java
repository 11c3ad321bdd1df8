package dev.calotte.check;

import dev.calotte.check.RecordedPatches.Patch;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** How panels were grouped: rows hold panels of one row, stars those round a hub. */
final class PatchWays {

    private final RecordedDome dome;
    private final RecordedPatches patches;
    private final Findings findings;

    PatchWays(RecordedDome dome, RecordedPatches patches, Findings findings) {
        this.dome = dome;
        this.patches = patches;
        this.findings = findings;
    }

    void check() {
        boolean stars = patches.way().equals("stars");
        if (!List.of("stars", "rows", "sectors").contains(patches.way())) {
            findings.same("patches.way", "the way", patches.way(), "stars, rows or sectors");
        }
        if (patches.way().equals("rows")) {
            patches.patches().forEach(this::row);
        }
        boolean all = stars && patches.patches().stream().allMatch(this::isAStar);
        if (patches.exactStars() && !all) {
            findings.add(Fault.DIFFERENT, "patches.exactStars", "not every patch is a star.");
        }
        if (!patches.exactStars() && !dome.opened() && stars && areWhole()) {
            findings.add(Fault.DIFFERENT, "patches.exactStars", "every patch is a whole star.");
        }
    }

    private void row(Patch patch) {
        if (patch.panels().stream()
                        .map(panel -> dome.panels().get(panel).row())
                        .distinct()
                        .count()
                > 1) {
            findings.add(Fault.DIFFERENT, "patches.way", "panels of " + patch.mark() + " are of several rows.");
        }
    }

    private Map<Integer, Integer> around(Patch patch) {
        Map<Integer, Integer> counts = new TreeMap<>();
        for (int panel : patch.panels()) {
            dome.panels().get(panel).vertices().forEach(vertex -> counts.merge(vertex, 1, Integer::sum));
        }
        return counts;
    }

    private boolean isAStar(Patch patch) {
        return around(patch).containsValue(patch.panels().size());
    }

    private boolean areWhole() {
        Map<Integer, Integer> counts = new TreeMap<>();
        dome.panels().forEach(panel -> panel.vertices().forEach(v -> counts.merge(v, 1, Integer::sum)));
        return patches.patches().stream()
                .allMatch(patch -> around(patch).entrySet().stream()
                        .anyMatch(hub -> hub.getValue() == patch.panels().size()
                                && hub.getValue().equals(counts.get(hub.getKey()))));
    }
}
