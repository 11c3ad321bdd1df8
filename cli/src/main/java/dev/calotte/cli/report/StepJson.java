package dev.calotte.cli.report;

import dev.calotte.choose.StockCurve;
import dev.calotte.choose.StockCurve.Step;
import dev.calotte.dome.Size;
import dev.calotte.nest.Measure;
import java.io.IOException;
import java.util.List;
import java.util.Locale;

/**
 * The steps of a stock in {@code dome.json}: {@code steps} with {@code by} (the measure of the sizes as the brief names
 * it), {@code measure} (pieces, length, price or area) and two lists: {@code smaller}, sizes that take less, the largest
 * first, and {@code larger}, none or one: the largest that takes no more, or of a roll what 5 % more takes. Each has
 * {@code size} (mm; a floor area in square metres), {@code spent}, {@code saves} (below 0 if it takes more; lengths in
 * mm, areas in square metres), and for bars {@code yields}: struts of which more come out of one bar, with
 * {@code mark}, {@code each} and the bar's {@code length}.
 */
final class StepJson {

    private final JsonWriter json;
    private final StockCurve curve;

    StepJson(JsonWriter json, StockCurve curve) {
        this.json = json;
        this.curve = curve;
    }

    void write() throws IOException {
        json.text("by", curve.by().key());
        json.text("measure", word(curve.measure()));
        json.objects("smaller", curve.smaller(), this::step);
        json.objects("larger", curve.larger().map(List::of).orElse(List.of()), this::step);
    }

    private void step(Step step) throws IOException {
        json.number("size", curve.by() == Size.Measure.FLOOR_AREA ? step.size() / 1e6 : step.size());
        json.number("spent", amount(step.spent()));
        json.number("saves", amount(curve.spent() - step.spent()));
        json.objects("yields", step.yields(), struts -> {
            json.text("mark", struts.mark());
            json.integer("each", struts.each());
            json.number("length", struts.barMm());
        });
    }

    private double amount(double spent) {
        return amount(curve.measure(), spent);
    }

    static String word(Measure measure) {
        return measure.name().toLowerCase(Locale.ROOT).replaceAll("_mm2?", "");
    }

    /** Areas in square metres. */
    static double amount(Measure measure, double spent) {
        return measure == Measure.AREA_MM2 ? spent / 1e6 : spent;
    }
}
