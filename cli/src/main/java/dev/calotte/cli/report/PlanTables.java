package dev.calotte.cli.report;

import dev.calotte.assembly.PieceMarks;
import dev.calotte.choose.CoverPlan;
import dev.calotte.cli.CoverDesign;
import dev.calotte.nest.BarPlan;
import dev.calotte.nest.CutBar;
import dev.calotte.nest.CutSheet;
import dev.calotte.nest.Placed;
import dev.calotte.units.Angle;
import dev.calotte.units.NumberText;
import java.util.List;
import java.util.Optional;

/** {@code bars.csv} and {@code sheets.csv}, a row for each cut in its order. */
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

    private static String number(int count) {
        return Integer.toString(count);
    }

    private static String mm(double mm) {
        return NumberText.fixed(mm, 3);
    }
}
