package dev.calotte.cli.report;

import dev.calotte.assembly.OpeningReport;
import dev.calotte.parts.Parts;
import java.io.IOException;

/**
 * Writes the list {@code openings} of {@code dome.json}.
 *
 * @param json where to write
 */
record OpeningJson(JsonWriter json) {

    void write(Parts parts) throws IOException {
        json.objects("openings", OpeningReport.of(parts), this::opening);
    }

    private void opening(OpeningReport report) throws IOException {
        json.text("name", report.name());
        json.texts("removedPanels", report.removedPanels());
        json.texts("removedStruts", report.removedStruts());
        json.texts("removedHubs", report.removedHubs());
        json.texts("freeEdges", report.freeEdges());
        json.texts("bareStruts", report.bareStruts());
        json.texts("rimHubs", report.rimHubs());
        json.objects("ends", report.ends(), this::end);
        json.integer("redundantBefore", report.redundantBefore());
        json.integer("redundantAfter", report.redundantAfter());
    }

    private void end(OpeningReport.End end) throws IOException {
        json.text("hub", end.hub());
        json.text("strut", end.strut());
        json.number("length", end.lengthMm());
    }
}
