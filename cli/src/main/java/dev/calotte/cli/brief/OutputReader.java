package dev.calotte.cli.brief;

import dev.calotte.document.Operation;
import dev.calotte.export.Colour;
import dev.calotte.export.Exporter;
import dev.calotte.export.Exporters;
import dev.calotte.export.Finish;
import dev.calotte.export.PageSize;
import dev.calotte.units.UnitSystem;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Reads the section {@code output}: how files are finished. */
final class OutputReader {

    private static final Map<String, PageSize> PAGES =
            new TreeMap<>(Map.of("A4", PageSize.A4, "Letter", PageSize.LETTER));

    private final Fields output;
    private Finish finish = Finish.PLAIN;

    private OutputReader(Fields output) {
        this.output = output;
    }

    static Finish read(Fields output, UnitSystem units) {
        OutputReader reader = new OutputReader(output);
        reader.dialects();
        reader.lineWidth(units);
        reader.page();
        reader.finish = reader.finish.withContours(ContoursReader.read(output, units));
        reader.operations(output.section("operations"));
        output.close();
        return reader.finish;
    }

    /** One key for each format that has dialects, called as the format. */
    private void dialects() {
        for (Exporter exporter : Exporters.installed().all()) {
            List<String> known = exporter.dialects();
            if (!known.isEmpty()) {
                List<String> usual = known.subList(0, 1);
                finish = finish.withDialects(
                        exporter.format(), output.list(exporter.format(), usual, Words.among(known)));
            }
        }
    }

    private void lineWidth(UnitSystem units) {
        if (output.offers("line-width")) {
            double widthMm = output.read("line-width", 1.0, Measured.lineWidth(units));
            finish = finish.withLine(widthMm);
        }
    }

    private void page() {
        PageSize page = output.read("page", finish.page(), Words.meaning(PAGES));
        finish = finish.withPage(page);
    }

    private void operations(Fields operations) {
        stroke(operations, "cut", Operation.CUT_OUTER, Operation.CUT_INNER);
        stroke(operations, "drill", Operation.DRILL);
        stroke(operations, "score", Operation.SCORE);
        stroke(operations, "engrave", Operation.ENGRAVE);
        operations.close();
    }

    private void stroke(Fields operations, String key, Operation... these) {
        Colour colour = operations.read(key, finish.stroke(these[0]), Colours::read);
        for (Operation operation : these) {
            finish = finish.withStroke(operation, colour);
        }
    }
}
