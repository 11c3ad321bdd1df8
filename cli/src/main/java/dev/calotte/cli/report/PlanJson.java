package dev.calotte.cli.report;

import dev.calotte.assembly.PieceMarks;
import dev.calotte.choose.CoverPlan;
import dev.calotte.dome.Panel;
import dev.calotte.geometry.Polygon;
import dev.calotte.nest.BarPlan;
import dev.calotte.nest.CutBar;
import dev.calotte.nest.CutSheet;
import dev.calotte.nest.Goal;
import dev.calotte.nest.Offcut;
import dev.calotte.nest.Placed;
import dev.calotte.stock.Outline;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/** How parts are cut from their stock, in {@code dome.json}. */
final class PlanJson {

    private final JsonWriter json;

    PlanJson(JsonWriter json) {
        this.json = json;
    }

    void bars(BarPlan plan) throws IOException {
        json.integer("used", plan.bars().size());
        json.number("utilisation", plan.utilisation());
        goal(plan.goal());
        json.number("offcut", plan.bars().stream().mapToDouble(CutBar::leftMm).sum());
        json.objects("bars", plan.bars(), this::bar);
    }

    private void bar(CutBar bar) throws IOException {
        json.number("length", bar.bar().lengthMm());
        json.objects("cuts", bar.cuts(), cut -> {
            json.text("mark", cut.mark());
            json.number("length", cut.lengthMm());
        });
        json.number("left", bar.leftMm());
    }

    private void goal(Goal goal) throws IOException {
        json.text("measure", goal.measure().name().toLowerCase(Locale.ROOT).replace("_mm", ""));
        json.number("spent", goal.reached());
        json.number("bound", goal.bound());
        json.flag("proven", goal.proven());
        json.text("proof", goal.proof().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    void plan(CoverPlan plan) throws IOException {
        List<CutSheet> sheets = plan.plan().sheets();
        json.integer("stockUsed", sheets.size());
        json.number("utilisation", plan.plan().utilisation());
        goal(plan.plan().goal());
        List<Integer> numbers = IntStream.range(0, sheets.size()).boxed().toList();
        json.objects("sheets", numbers, number -> sheet(plan, number));
    }

    private void sheet(CoverPlan plan, int number) throws IOException {
        CutSheet sheet = plan.plan().sheets().get(number);
        PieceMarks marks = new PieceMarks(plan.fit().patterns().parts());
        json.integer("stock", plan.fit().stocks().indexOf(sheet.stock()));
        json.number("length", sheet.lengthMm());
        json.number("width", sheet.widthMm());
        json.number("margin", sheet.stock().marginMm());
        if (sheet.stock() instanceof Outline outline) {
            json.text("name", outline.name());
            border("outline", outline.border());
        }
        List<Integer> places = IntStream.range(0, sheet.parts().size()).boxed().toList();
        json.objects("parts", places, place -> {
            Panel panel = plan.panels().get(number).get(place);
            part(sheet.parts().get(place), marks.of(panel));
        });
        json.list("offcuts", sheet.offcuts(), this::offcut);
    }

    private void part(Placed placed, String panel) throws IOException {
        json.text("mark", placed.mark());
        json.text("panel", panel);
        json.number("x", placed.xMm());
        json.number("y", placed.yMm());
        json.number("rotation", StrictMath.toDegrees(placed.turnRad()));
        json.flag("mirrored", placed.mirrored());
        border("outline", placed.outline());
    }

    private void border(String name, Polygon outline) throws IOException {
        List<Integer> corners = IntStream.range(0, outline.size()).boxed().toList();
        json.list(name, corners, c -> json.numbers(outline.x(c), outline.y(c)));
    }

    private void offcut(Offcut offcut) throws IOException {
        json.numbers(offcut.xMm(), offcut.yMm(), offcut.lengthMm(), offcut.widthMm());
    }
}
