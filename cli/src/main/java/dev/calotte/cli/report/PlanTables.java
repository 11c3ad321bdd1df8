package dev.calotte.cli.report;

import dev.calotte.assembly.PieceMarks;
import dev.calotte.choose.CoverPlan;
import dev.calotte.cli.CoverDesign;
import dev.calotte.cli.Design;
import dev.calotte.nest.BarPlan;
import dev.calotte.nest.CutBar;
import dev.calotte.nest.CutSheet;
import dev.calotte.nest.Placed;
import dev.calotte.stock.Bar;
import dev.calotte.stock.Roll;
import dev.calotte.stock.Sheet;
import dev.calotte.stock.Stock;
import dev.calotte.units.Angle;
import dev.calotte.units.NumberText;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** {@code bars.csv} and {@code sheets.csv}, a row for each cut in its order, and what is to be bought for the bill. */
final class PlanTables {

    private PlanTables() {}

    static String bars(BarPlan plan) {
        Csv csv = new Csv().row("bar", "bar_length_mm", "cut", "mark", "length_mm", "left_mm");
        for (int i = 0; i < plan.bars().size(); i++) {
            CutBar bar = plan.bars().get(i);
            for (int cut = 0; cut < bar.cuts().size(); cut++) {
                csv.row(
                        number(i + 1),
                        mm(bar.bar().lengthMm()),
                        number(cut + 1),
                        bar.cuts().get(cut).mark(),
                        mm(bar.cuts().get(cut).lengthMm()),
                        mm(bar.leftMm()));
            }
        }
        return csv.toString();
    }

    static String sheets(List<CoverDesign> covers) {
        Csv csv = new Csv()
                .row(
                        "cover",
                        "sheet",
                        "length_mm",
                        "width_mm",
                        "pattern",
                        "panel",
                        "x_mm",
                        "y_mm",
                        "rotation_deg",
                        "face_down");
        covers.stream().map(CoverDesign::plan).flatMap(Optional::stream).forEach(plan -> addSheets(csv, plan));
        return csv.toString();
    }

    private static void addSheets(Csv csv, CoverPlan plan) {
        PieceMarks marks = new PieceMarks(plan.fit().patterns().parts());
        for (int i = 0; i < plan.plan().sheets().size(); i++) {
            CutSheet sheet = plan.plan().sheets().get(i);
            for (int part = 0; part < sheet.parts().size(); part++) {
                Placed placed = sheet.parts().get(part);
                csv.row(
                        plan.fit().patterns().cover().name(),
                        number(i + 1),
                        mm(sheet.lengthMm()),
                        mm(sheet.widthMm()),
                        placed.mark(),
                        marks.of(plan.panels().get(i).get(part)),
                        mm(placed.xMm()),
                        mm(placed.yMm()),
                        NumberText.fixed(Angle.degrees(placed.turnRad()), 4),
                        placed.mirrored() ? "yes" : "no");
            }
        }
    }

    /** What is bought: a row for each stock that is used. */
    static String bill(Design design) {
        Csv csv = new Csv();
        design.bars().ifPresent(plan -> {
            Map<Integer, Integer> used = new TreeMap<>();
            plan.bars().forEach(bar -> used.merge(design.project().bars().indexOf(bar.bar()), 1, Integer::sum));
            used.forEach((place, count) -> addBar(csv, design.project().bars().get(place), count));
        });
        design.covers().stream()
                .map(CoverDesign::plan)
                .flatMap(Optional::stream)
                .forEach(plan -> {
                    Map<Integer, Double> used = new TreeMap<>();
                    for (CutSheet sheet : plan.plan().sheets()) {
                        double amount = sheet.stock() instanceof Roll ? sheet.lengthMm() / 1000 : 1;
                        used.merge(plan.fit().stocks().indexOf(sheet.stock()), amount, Double::sum);
                    }
                    used.forEach((place, amount) ->
                            addStock(csv, plan, plan.fit().stocks().get(place), amount));
                });
        return csv.toString();
    }

    private static void addBar(Csv csv, Bar bar, int count) {
        csv.row("bar", "", number(count), mm(bar.lengthMm()), "mm", metres(count * bar.lengthMm()), "m");
        OptionalDouble kg = bar.terms().massKg();
        addTerms(csv, "bars", bar, count, kg.isPresent() ? kg.getAsDouble() * bar.lengthMm() / 1000 : Double.NaN);
    }

    private static void addStock(Csv csv, CoverPlan plan, Stock stock, double amount) {
        String cover = plan.fit().patterns().cover().name();
        double kg = stock.terms().massKg().orElse(Double.NaN);
        if (stock instanceof Sheet sheet) {
            double area = sheet.lengthMm() * sheet.widthMm() / 1e6;
            csv.row(
                    "sheet",
                    cover,
                    number((int) amount),
                    NumberText.fixed(area, 6),
                    "m2",
                    NumberText.fixed(area * amount, 6),
                    "m2");
            addTerms(csv, cover, stock, amount, kg * area);
        } else if (stock instanceof Roll roll) {
            csv.row("roll", cover, "1", mm(roll.widthMm()), "mm wide", NumberText.fixed(amount, 3), "m");
            addTerms(csv, cover, stock, amount, kg * roll.widthMm() / 1000);
        }
    }

    private static void addTerms(Csv csv, String what, Stock stock, double amount, double kgEach) {
        String count = NumberText.trimmed(amount, 3);
        stock.terms()
                .price()
                .ifPresent(price -> csv.row(
                        "price",
                        what,
                        count,
                        NumberText.fixed(price, 2),
                        "money",
                        NumberText.fixed(price * amount, 2),
                        "money"));
        if (!Double.isNaN(kgEach)) {
            csv.row("mass", what, count, NumberText.fixed(kgEach, 3), "kg", NumberText.fixed(kgEach * amount, 3), "kg");
        }
    }

    private static String number(int count) {
        return Integer.toString(count);
    }

    private static String mm(double mm) {
        return NumberText.fixed(mm, 3);
    }

    private static String metres(double mm) {
        return NumberText.fixed(mm / 1000, 3);
    }
}
