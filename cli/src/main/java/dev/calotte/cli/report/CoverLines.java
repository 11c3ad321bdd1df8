package dev.calotte.cli.report;

import dev.calotte.choose.CoverFit;
import dev.calotte.choose.Mends;
import dev.calotte.choose.PatternFit;
import dev.calotte.choose.WidestFrom;
import dev.calotte.cli.CoverDesign;
import dev.calotte.cli.Design;
import dev.calotte.cli.brief.SizeWish;
import dev.calotte.nest.Measure;
import dev.calotte.parts.PanelKind;
import dev.calotte.sphere.Breakdown;
import dev.calotte.stock.Bar;
import dev.calotte.stock.Outline;
import dev.calotte.stock.Roll;
import dev.calotte.stock.Sheet;
import dev.calotte.stock.Stock;
import dev.calotte.units.NumberText;
import dev.calotte.units.UnitSystem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The covers of a design on its page: what is cut, what does not fit and by how much, and what helps. */
final class CoverLines {

    private static final int MOST_ROWS = 12;

    private final UnitSystem units;
    private final CoverDesign cover;
    private final List<String> lines = new ArrayList<>();

    private CoverLines(UnitSystem units, CoverDesign cover) {
        this.units = units;
        this.cover = cover;
    }

    static List<String> of(Design design) {
        List<String> lines = new ArrayList<>();
        design.found().widest().ifPresent(widest -> {
            lines.add("");
            lines.add("Size: as large as the stock allows; " + widest.limiting() + " just fits.");
        });
        design.found().widestFrom().ifPresent(from -> {
            lines.add("");
            lines.addAll(ShowPage.wrapped(0, widestFrom(from, design)));
        });
        for (CoverDesign cover : design.covers()) {
            lines.addAll(new CoverLines(design.project().units(), cover).lines());
        }
        return lines;
    }

    private static String widestFrom(WidestFrom from, Design design) {
        UnitSystem units = design.project().units();
        String what = from.plan().fit().patterns().cover().name() + " comes out of " + supply(design);
        if (from.proven()) {
            return "Size: the largest dome whose " + what + ", proven.";
        }
        String larger = from.boundMm().isPresent()
                ? "No radius above " + units.length(from.boundMm().getAsDouble()) + " can do; what lies between"
                : "Whether a larger one can do";
        return "Size: the largest dome found whose " + what + ". " + larger + " is not known.";
    }

    private static String supply(Design design) {
        if (!(design.project().size() instanceof SizeWish.WidestFrom wish)) {
            return "its stock";
        }
        double amount = wish.supply().amount();
        if (wish.supply().measure() == Measure.LENGTH_MM) {
            return design.project().units().longLength(amount) + " of roll";
        }
        return NumberText.trimmed(amount, 1) + (amount == 1 ? " sheet" : " sheets");
    }

    private List<String> lines() {
        CoverFit fit = cover.fit();
        int count = fit.fits().size();
        lines.add("");
        lines.addAll(ShowPage.wrapped(
                0,
                "Cover " + fit.patterns().cover().name() + ", " + count + (count == 1 ? " pattern" : " patterns")
                        + stocks(fit.stocks())));
        TextTable table = new TextTable(1, "panel", "patterns", "pieces", "widest cut", "fits");
        List<PanelKind> kinds = fit.patterns().parts().panelKinds();
        kinds.stream().limit(MOST_ROWS).forEach(kind -> addRow(table, kind));
        lines.addAll(table.lines());
        if (kinds.size() > MOST_ROWS) {
            lines.add("  and " + (kinds.size() - MOST_ROWS) + " more kinds: tables/patterns.csv of `make`");
        }
        addSeams();
        cover.plan().ifPresent(plan -> lines.addAll(ShowPage.wrapped(2, PlanLines.ofCover(plan, units))));
        cover.byPatches().ifPresent(batched -> lines.addAll(ShowPage.wrapped(2, PlanLines.ofPatches(batched, units))));
        cover.saving().ifPresent(saving -> lines.addAll(ShowPage.wrapped(2, StepLines.ofSeams(saving, units))));
        cover.curve()
                .flatMap(curve -> StepLines.ofCover(curve, units))
                .ifPresent(line -> lines.addAll(ShowPage.wrapped(2, line)));
        cover.mends().ifPresent(this::addMends);
        return lines;
    }

    private String stocks(List<Stock> stocks) {
        return stocks.isEmpty()
                ? ""
                : ", from " + stocks.stream().map(this::stock).collect(Collectors.joining(" or "));
    }

    private String stock(Stock stock) {
        if (stock instanceof Sheet sheet) {
            return "sheets of " + units.length(sheet.lengthMm()) + " by " + units.length(sheet.widthMm());
        }
        if (stock instanceof Outline outline) {
            return outline.name() + ", " + units.length(outline.lengthMm()) + " by " + units.length(outline.widthMm())
                    + " over all,";
        }
        if (stock instanceof Roll roll) {
            return "a roll of " + units.length(roll.widthMm());
        }
        return "bars of " + units.length(((Bar) stock).lengthMm());
    }

    /** The patterns of a kind in one row, with the one that fits worst. */
    private void addRow(TextTable table, PanelKind kind) {
        List<PatternFit> patterns = cover.fit().fits().stream()
                .filter(fit -> fit.pattern().kind().equals(kind))
                .toList();
        double widest = patterns.stream()
                .mapToDouble(fit -> fit.pattern().whole().blank().narrowestWidth())
                .max()
                .orElseThrow();
        PatternFit worst = patterns.stream()
                .max(Comparator.comparingDouble(fit -> fit.whole().overByMm()))
                .orElseThrow();
        table.row(
                kind.mark(),
                Integer.toString(patterns.size()),
                Integer.toString(kind.count()),
                units.length(widest, 1),
                fits(worst));
    }

    private String fits(PatternFit fit) {
        if (fit.pieces().size() > 1) {
            return "in " + fit.pieces().size() + " parts";
        }
        return fit.whole().fits()
                ? "yes"
                : "no, over by " + units.length(fit.whole().overByMm(), 1);
    }

    private void addSeams() {
        double total = cover.fit().seamMm();
        if (total > 0) {
            lines.add("  Seams inside panels: " + units.longLength(total) + " in all.");
        }
    }

    private void addMends(Mends mends) {
        List<String> helps = new ArrayList<>();
        if (mends.turned()) {
            helps.add("grain: free");
        }
        mends.seams()
                .ifPresent(n -> helps.add("split: seam, " + n + (n == 1 ? " seam" : " seams") + " a panel at most"));
        mends.spacing().ifPresent(s -> helps.add("spacing: " + s.name().toLowerCase(Locale.ROOT)));
        mends.breakdown().ifPresent(b -> helps.add("breakdown: " + breakdown(b)));
        mends.radiusMm().ifPresent(mm -> helps.add("a radius of " + units.length(mm) + " or less"));
        lines.addAll(ShowPage.wrapped(
                2,
                helps.isEmpty() ? "Nothing that was tried helps." : "What helps: " + String.join("; ", helps) + "."));
    }

    private static String breakdown(Breakdown breakdown) {
        return breakdown.c() == 0 ? Integer.toString(breakdown.b()) : breakdown.toString();
    }
}
