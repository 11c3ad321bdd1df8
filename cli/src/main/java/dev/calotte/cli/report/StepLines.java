package dev.calotte.cli.report;

import dev.calotte.choose.SeamSaving;
import dev.calotte.choose.StockCurve;
import dev.calotte.choose.StockCurve.Step;
import dev.calotte.choose.StockCurve.Yield;
import dev.calotte.dome.Size;
import dev.calotte.nest.Measure;
import dev.calotte.units.NumberText;
import dev.calotte.units.UnitSystem;
import java.util.Locale;
import java.util.Optional;

/** The nearest step in material, in a sentence: what a little less dome saves, and how far the same stock will do. */
final class StepLines {

    private final StockCurve curve;
    private final UnitSystem units;
    /** What pieces are called, one and many of them. */
    private final String piece;

    private StepLines(StockCurve curve, UnitSystem units, String piece) {
        this.curve = curve;
        this.units = units;
        this.piece = piece;
    }

    /** The sentence on the bars of a frame; nothing if no step is near. */
    static Optional<String> ofBars(StockCurve curve, UnitSystem units) {
        return new StepLines(curve, units, "bar").line("");
    }

    /** The sentence on a cover; nothing if no step is near. */
    static Optional<String> ofCover(StockCurve curve, UnitSystem units) {
        return new StepLines(curve, units, "sheet").line(" (by first plans)");
    }

    /** What seams bring that panels need not have. */
    static String ofSeams(SeamSaving saving, UnitSystem units) {
        if (saving.saved() == 0) {
            return "No seam that was tried saves a hundredth of the stock.";
        }
        return "Seams that panels need not have save " + amount(saving.measure(), saving.saved(), "sheet", units)
                + " for " + units.longLength(saving.seamMm()) + " more of seam.";
    }

    private String sized() {
        return curve.by().name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private String size(double value) {
        return curve.by() == Size.Measure.FLOOR_AREA ? units.area(value) : units.length(value);
    }

    private Optional<String> line(String how) {
        Optional<String> less = curve.smaller().stream().findFirst().map(this::saves);
        Optional<String> more = curve.larger().flatMap(this::costs);
        if (less.isEmpty() && more.isEmpty()) {
            return Optional.empty();
        }
        String both = less.orElse("") + (less.isPresent() && more.isPresent() ? "; " : "") + more.orElse("");
        return Optional.of("A " + sized() + " of " + both + how + ".");
    }

    private String saves(Step step) {
        String yields =
                step.yields().isEmpty() ? "" : ", as " + struts(step.yields().get(0)) + " come out of one";
        return size(step.size()) + " saves " + amount(curve.spent() - step.spent()) + yields;
    }

    private static String struts(Yield struts) {
        return struts.each() + " " + struts.mark();
    }

    private Optional<String> costs(Step step) {
        double more = step.spent() - curve.spent();
        return more > 0
                ? Optional.of(size(step.size()) + " takes " + amount(more) + " more")
                : Optional.of("up to " + size(step.size()) + " takes no more");
    }

    private String amount(double spent) {
        return amount(curve.measure(), spent, piece, units);
    }

    private static String amount(Measure measure, double spent, String piece, UnitSystem units) {
        return switch (measure) {
            case PRICE -> NumberText.fixed(spent, 2) + " in price";
            case PIECES -> NumberText.trimmed(spent, 0) + " " + piece + (spent == 1 ? "" : "s");
            case LENGTH_MM -> units.longLength(spent) + (piece.equals("sheet") ? " of roll" : " of bars");
            case AREA_MM2 -> units.area(spent);
        };
    }
}
