package dev.calotte.cli.report;

import dev.calotte.choose.BatchedCover;
import dev.calotte.choose.CoverPlan;
import dev.calotte.cli.Design;
import dev.calotte.nest.BarPlan;
import dev.calotte.nest.CutBar;
import dev.calotte.nest.CutSheet;
import dev.calotte.nest.Goal;
import dev.calotte.nest.Measure;
import dev.calotte.stock.Outline;
import dev.calotte.stock.Roll;
import dev.calotte.stock.Sheet;
import dev.calotte.stock.Stock;
import dev.calotte.units.NumberText;
import dev.calotte.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What has to be bought, in words: how much, how well it is used, and how much less it could be at most. */
final class PlanLines {

    private final UnitSystem units;

    private PlanLines(UnitSystem units) {
        this.units = units;
    }

    /** The bars; nothing where the brief names none. */
    static List<String> ofBars(Design design) {
        List<String> lines = new ArrayList<>();
        design.bars().ifPresent(plan -> {
            lines.add("");
            lines.addAll(ShowPage.wrapped(0, ofBars(plan, design.project().units())));
            design.barCurve()
                    .flatMap(curve -> StepLines.ofBars(curve, design.project().units()))
                    .ifPresent(line -> lines.addAll(ShowPage.wrapped(2, line)));
        });
        return lines;
    }

    /** The bars in a sentence. */
    static String ofBars(BarPlan plan, UnitSystem units) {
        return new PlanLines(units).bars(plan);
    }

    /** The stock of a cover. */
    static String ofCover(CoverPlan plan, UnitSystem units) {
        return new PlanLines(units).cover(plan);
    }

    private String bars(BarPlan plan) {
        String lengths = plan.bars().stream()
                .map(CutBar::bar)
                .map(bar -> units.longLength(bar.lengthMm()))
                .distinct()
                .collect(Collectors.joining(" and "));
        return "Bars: " + plan.bars().size() + " of " + lengths + ", " + percent(plan.utilisation()) + " used, "
                + goal(plan.goal());
    }

    private String cover(CoverPlan plan) {
        return "Uses " + used(plan.plan().sheets()) + ", " + percent(plan.plan().utilisation()) + " of it in panels, "
                + goal(plan.plan().goal());
    }

    private String used(List<CutSheet> sheets) {
        double roll = sheets.stream()
                .filter(sheet -> sheet.stock() instanceof Roll)
                .mapToDouble(CutSheet::lengthMm)
                .sum();
        long count =
                sheets.stream().filter(sheet -> sheet.stock() instanceof Sheet).count();
        List<String> used = new ArrayList<>();
        sheets.stream()
                .map(CutSheet::stock)
                .distinct()
                .forEach(stock -> outline(sheets, stock).ifPresent(used::add));
        if (count > 0) {
            used.add(count == 1 ? "1 sheet" : count + " sheets");
        }
        if (roll > 0) {
            used.add(units.longLength(roll) + " of roll");
        }
        return String.join(" and ", used);
    }

    /** What it costs that a cover is cut patch by patch. */
    static String ofPatches(BatchedCover cover, UnitSystem units) {
        return new PlanLines(units).patches(cover);
    }

    private String patches(BatchedCover cover) {
        int most = cover.groups().stream().mapToInt(n -> n).max().orElse(1);
        String open = most == 1 ? "" : ", up to " + most + " patches together";
        List<String> differences = new ArrayList<>();
        boolean onRoll = cover.plan().fit().stocks().stream().anyMatch(Roll.class::isInstance);
        boolean onSheets = cover.plan().fit().stocks().stream().anyMatch(Sheet.class::isInstance);
        if (onSheets) {
            int sheets = Math.abs(cover.extraSheets());
            differences.add(
                    (sheets == 1 ? "1 sheet " : sheets + " sheets ") + (cover.extraSheets() < 0 ? "fewer" : "more"));
        }
        if (onRoll) {
            differences.add(units.longLength(Math.abs(cover.extraRollMm()))
                    + (onSheets ? " of roll " : " ")
                    + (cover.extraRollMm() < 0 ? "less" : "more"));
        }
        return "Cut patch by patch" + open + ": " + String.join(" and ", differences) + " than "
                + used(cover.free().sheets()) + " in any order.";
    }

    /** How often an outline is used, and for how much. */
    private static Optional<String> outline(List<CutSheet> sheets, Stock stock) {
        List<CutSheet> same =
                sheets.stream().filter(sheet -> sheet.stock().equals(stock)).toList();
        if (same.isEmpty() || !(stock instanceof Outline outline)) {
            return Optional.empty();
        }
        int pieces = same.stream().mapToInt(sheet -> sheet.parts().size()).sum();
        return Optional.of((same.size() == 1 ? "" : same.size() + " times ") + outline.name() + " for " + pieces
                + (pieces == 1 ? " piece" : " pieces"));
    }

    private String goal(Goal goal) {
        return goal.proven()
                ? "proven the least."
                : "at least " + amount(goal.measure(), goal.bound()) + "; more --steps look for less.";
    }

    private String amount(Measure measure, double bound) {
        return switch (measure) {
            case PRICE -> NumberText.fixed(bound, 2) + " in price";
            case PIECES -> NumberText.trimmed(Math.ceil(bound - 1e-9), 0);
            case LENGTH_MM -> units.longLength(bound);
            case AREA_MM2 -> units.area(bound);
        };
    }

    private static String percent(double part) {
        return NumberText.fixed(100 * part, 1) + " %";
    }
}
