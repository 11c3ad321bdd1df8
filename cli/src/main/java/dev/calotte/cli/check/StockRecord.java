package dev.calotte.cli.check;

import dev.calotte.check.RecordedCover;
import dev.calotte.check.RecordedSides;
import dev.calotte.check.RecordedSteps;
import dev.calotte.check.RecordedSupply;
import dev.calotte.check.RecordedSupply.Goal;
import dev.calotte.check.RecordedSupply.Line;
import dev.calotte.check.RecordedSupply.Used;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Understands what {@code dome.json} says of stock, of what it costs, and of the sides of patterns.
 *
 * @param root the whole text
 */
record StockRecord(Json root) {

    private List<Line> bill() throws RecordException {
        List<Line> lines = new ArrayList<>();
        for (Json line : root.list("bill")) {
            double amount = line.number("needed") + line.number("spare");
            lines.add(new Line(
                    line.text("item"),
                    line.text("mark"),
                    line.number("needed"),
                    number(line, "length"),
                    number(line, "width"),
                    number(line, "price") / amount));
        }
        return lines;
    }

    private static double number(Json json, String name) throws RecordException {
        return json.has(name) ? json.number(name) : Double.NaN;
    }

    Optional<RecordedSupply> bars() throws RecordException {
        if (!root.has("bars")) {
            return Optional.empty();
        }
        Json json = root.at("bars");
        List<Line> lines =
                bill().stream().filter(line -> line.item().equals("bar")).toList();
        return Optional.of(new RecordedSupply(
                "bars",
                json.whole("used"),
                json.number("utilisation"),
                goal(json),
                bars(json.list("bars"), lines),
                lines));
    }

    /** The record does not say to which stock a bar belongs; they stand in the order of the bill, which counts them. */
    private static List<Used> bars(List<Json> bars, List<Line> lines) throws RecordException {
        List<Used> used = new ArrayList<>();
        int line = 0;
        double left = lines.isEmpty() ? 0 : lines.get(0).needed();
        for (Json bar : bars) {
            while (left < 1 && line + 1 < lines.size()) {
                line++;
                left += lines.get(line).needed();
            }
            left--;
            double parts = 0;
            for (Json cut : bar.list("cuts")) {
                parts += cut.number("length");
            }
            double length = bar.number("length");
            used.add(new Used(line, "", length, 0, 0, length, parts));
        }
        return used;
    }

    private static Goal goal(Json json) throws RecordException {
        return new Goal(
                json.text("measure"),
                json.number("spent"),
                json.number("bound"),
                json.flag("proven"),
                json.text("proof"));
    }

    /** The plans of covers; the bill has the stocks of each after those of the one before. */
    List<RecordedSupply> covers(List<RecordedCover> covers) throws RecordException {
        List<Line> bill = bill().stream()
                .filter(line -> List.of("sheet", "roll", "offcut").contains(line.item()))
                .toList();
        List<RecordedSupply> supplies = new ArrayList<>();
        List<Json> recorded = root.list("covers");
        int from = 0;
        for (int i = 0; i < covers.size(); i++) {
            if (covers.get(i).planned()) {
                Json plan = recorded.get(i).at("plan");
                List<Used> used = used(plan, covers.get(i));
                int to = from
                        + (int) used.stream().mapToInt(Used::stock).distinct().count();
                boolean last = covers.stream().skip(i + 1L).noneMatch(RecordedCover::planned);
                supplies.add(new RecordedSupply(
                        covers.get(i).name() + " plan",
                        plan.whole("stockUsed"),
                        plan.number("utilisation"),
                        goal(plan),
                        used,
                        bill.subList(Math.min(from, bill.size()), last ? bill.size() : Math.min(to, bill.size()))));
                from = Math.min(to, bill.size());
            }
        }
        return supplies;
    }

    private static List<Used> used(Json plan, RecordedCover cover) throws RecordException {
        List<Used> used = new ArrayList<>();
        List<Json> sheets = plan.list("sheets");
        for (int i = 0; i < sheets.size(); i++) {
            RecordedCover.Sheet sheet = cover.sheets().get(i);
            used.add(new Used(
                    sheets.get(i).whole("stock"),
                    sheets.get(i).textIfAny("name"),
                    sheet.length(),
                    sheet.width(),
                    sheet.margin(),
                    Math.abs(sheet.border().area()),
                    sheet.parts().stream()
                            .mapToDouble(part -> Math.abs(part.outline().area()))
                            .sum()));
        }
        return used;
    }

    static Optional<RecordedSteps> steps(String place, Json json) throws RecordException {
        if (!json.has("steps")) {
            return Optional.empty();
        }
        Json steps = json.at("steps");
        return Optional.of(new RecordedSteps(
                place + ".steps",
                steps.text("by"),
                steps.text("measure"),
                each(steps.list("smaller")),
                each(steps.list("larger"))));
    }

    private static List<RecordedSteps.Step> each(List<Json> list) throws RecordException {
        List<RecordedSteps.Step> steps = new ArrayList<>();
        for (Json step : list) {
            List<String> yields = new ArrayList<>();
            for (Json kind : step.list("yields")) {
                yields.add(kind.text("mark"));
            }
            steps.add(new RecordedSteps.Step(step.number("size"), step.number("spent"), step.number("saves"), yields));
        }
        return steps;
    }

    RecordedSides sides(int cover) throws RecordException {
        Map<String, List<RecordedSides.Side>> sides = new TreeMap<>();
        Map<String, Double> grains = new TreeMap<>();
        for (Json piece : root.list("covers").get(cover).list("patterns")) {
            List<RecordedSides.Side> list = new ArrayList<>();
            for (Json side : piece.list("sides")) {
                list.add(new RecordedSides.Side(
                        side.text("strut"),
                        side.number("length"),
                        number(side, "dihedral"),
                        side.number("bevel"),
                        side.number("growth")));
            }
            sides.put(piece.text("mark"), list);
            if (piece.has("grain")) {
                grains.put(piece.text("mark"), piece.number("grain"));
            }
        }
        return new RecordedSides(sides, grains);
    }
}
