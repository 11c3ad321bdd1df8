package dev.calotte.cli.report;

import dev.calotte.cli.brief.Project;
import dev.calotte.contour.Contours;
import dev.calotte.export.Finish;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Writes {@code output} of {@code dome.json}: how files were finished, as far as who reads them back has to know.
 *
 * @param json where to write
 */
record OutputJson(JsonWriter json) {

    void write(Project project) throws IOException {
        Finish finish = project.output().finish();
        Contours contours = finish.contours();
        json.texts(
                "files", project.output().files().stream().map(OutputJson::word).toList());
        for (Map.Entry<String, List<String>> format : finish.dialects().entrySet()) {
            json.texts(format.getKey(), format.getValue());
        }
        json.number("kerf", project.output().kerfMm());
        json.text("start", word(contours.start()));
        if (contours.flattenMm().isPresent()) {
            json.number("flatten", contours.flattenMm().getAsDouble());
        }
        json.text("sharedEdges", word(contours.sharedEdges()));
        json.text("closing", word(contours.closing()));
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }
}
