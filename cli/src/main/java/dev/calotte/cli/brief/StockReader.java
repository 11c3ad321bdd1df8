package dev.calotte.cli.brief;

import dev.calotte.problem.Problem.Code;
import dev.calotte.stock.Outline;
import dev.calotte.stock.Roll;
import dev.calotte.stock.Sheet;
import dev.calotte.stock.Stock;
import dev.calotte.stock.Terms;
import dev.calotte.units.UnitSystem;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/**
 * Reads the sheets, rolls and outlines of a cover: one, or a list of them.
 *
 * @param fields the keys of the cover
 * @param units what a bare number means
 * @param outlines where files with outlines lie
 */
record StockReader(Fields fields, UnitSystem units, OutlineFiles outlines) {

    private static final String EXAMPLE =
            "Write for example stock: { sheet: [2440 mm, 1220 mm] } or stock: { roll: 1500 mm }.";

    List<Stock> stocks() {
        if (!fields.offers("stock")) {
            return List.of();
        }
        List<Fields> items = fields.isList("stock") ? fields.sections("stock") : List.of(fields.section("stock"));
        return items.stream().map(this::stock).flatMap(Optional::stream).toList();
    }

    private Optional<Stock> stock(Fields item) {
        item.notTogether(List.of("sheet", "roll", "outline"));
        double margin = item.read("margin", 0.0, Measured.notBelowZero(units));
        Optional<Stock> stock = item.offers("outline")
                ? outline(item, margin)
                : item.offers("roll") ? roll(item, margin) : sheet(item, margin);
        item.close();
        return stock;
    }

    private Optional<Stock> outline(Fields item, double margin) {
        item.offers("sheet");
        item.offers("roll");
        Terms terms = TermsReader.read(item, "price", "mass-per-area");
        Optional<OutlineFiles.Found> found =
                item.read("outline", Optional.empty(), node -> Optional.of(outlines.read(node)));
        return found.flatMap(file -> made(item, () -> new Outline(file.name(), file.border(), margin, terms)));
    }

    private Optional<Stock> sheet(Fields item, double margin) {
        item.require("sheet", EXAMPLE);
        Terms terms = TermsReader.read(item, "price", "mass-per-area");
        List<Double> sides = item.read("sheet", List.of(), Measured.pair(units, EXAMPLE));
        return sides.isEmpty()
                ? Optional.empty()
                : made(item, () -> new Sheet(sides.get(0), sides.get(1), margin, terms));
    }

    private Optional<Stock> roll(Fields item, double margin) {
        item.offers("sheet");
        Terms terms = TermsReader.read(item, "price-per-metre", "mass-per-area");
        double width = item.read("roll", 0.0, Measured.size(units));
        double length = item.read("length", 0.0, Measured.size(units));
        OptionalDouble ends = item.has("length") ? OptionalDouble.of(length) : OptionalDouble.empty();
        return item.sound("roll") && item.sound("length")
                ? made(item, () -> new Roll(width, margin, ends, terms))
                : Optional.empty();
    }

    private static Optional<Stock> made(Fields item, Supplier<Stock> maker) {
        try {
            return Optional.of(maker.get());
        } catch (IllegalArgumentException nothingLeft) {
            item.refuse(
                    "margin",
                    new Refusal(Code.IMPOSSIBLE, "the margins use up the stock.", "Make the margin smaller."));
            return Optional.empty();
        }
    }
}
