package dev.calotte.cli.report;

import dev.calotte.choose.BatchedCover;
import dev.calotte.nest.CutSheet;
import dev.calotte.nest.Placed;
import dev.calotte.stock.Roll;
import dev.calotte.stock.Sheet;
import java.io.IOException;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * Writes {@code byPatches} of a plan in {@code dome.json}: how much more than a plan in any order it takes, and for each
 * group of patches which they are and where its parts lie.
 *
 * @param json where to write
 * @param cover what was laid
 */
record BatchJson(JsonWriter json, BatchedCover cover) {

    void write() throws IOException {
        json.integer("groups", cover.groups().size());
        json.integer(
                "mostInAGroup", cover.groups().stream().mapToInt(n -> n).max().orElse(0));
        if (cover.plan().fit().stocks().stream().anyMatch(Roll.class::isInstance)) {
            json.number("extraMm", cover.extraRollMm());
        }
        if (cover.plan().fit().stocks().stream().anyMatch(Sheet.class::isInstance)) {
            json.integer("extraSheets", cover.extraSheets());
        }
        json.number("stockSpent", cover.free().goal().reached());
        List<Integer> groups = IntStream.range(0, cover.groups().size()).boxed().toList();
        json.objects("stretches", groups, this::group);
    }

    private void group(int group) throws IOException {
        int first = cover.groups().subList(0, group).stream().mapToInt(n -> n).sum();
        json.integers(
                "patches",
                IntStream.range(first, first + cover.groups().get(group))
                        .boxed()
                        .toList());
        List<Integer> sheets = IntStream.range(0, cover.groupOf().size())
                .filter(sheet -> cover.groupOf().get(sheet).contains(group))
                .boxed()
                .toList();
        json.objects("on", sheets, sheet -> stretch(sheet, group));
    }

    private void stretch(int sheet, int group) throws IOException {
        CutSheet on = cover.plan().plan().sheets().get(sheet);
        List<Placed> parts = IntStream.range(0, on.parts().size())
                .filter(part -> cover.groupOf().get(sheet).get(part) == group)
                .mapToObj(on.parts()::get)
                .toList();
        json.integer("sheet", sheet);
        json.number("from", parts.stream().mapToDouble(BatchJson::from).min().orElseThrow());
        json.number("to", parts.stream().mapToDouble(BatchJson::to).max().orElseThrow());
    }

    private static double from(Placed part) {
        return along(part).min().orElseThrow();
    }

    private static double to(Placed part) {
        return along(part).max().orElseThrow();
    }

    private static DoubleStream along(Placed part) {
        return IntStream.range(0, part.outline().size()).mapToDouble(part.outline()::x);
    }
}
