package dev.calotte.cli.brief;

import dev.calotte.problem.Problem.Code;
import dev.calotte.stock.Bar;
import dev.calotte.stock.Terms;
import dev.calotte.units.UnitSystem;
import java.util.List;
import java.util.Optional;

/**
 * Reads the bars that struts are cut from: one sort, or a list of them.
 *
 * @param frame the keys of the frame
 * @param units what a bare number means
 */
record BarReader(Fields frame, UnitSystem units) {

    private static final String EXAMPLE = "Write for example bar: { length: 6 m, kerf: 3 mm }.";

    List<Bar> bars() {
        if (!frame.offers("bar")) {
            return List.of();
        }
        List<Fields> items = frame.isList("bar") ? frame.sections("bar") : List.of(frame.section("bar"));
        return items.stream().map(this::bar).flatMap(Optional::stream).toList();
    }

    private Optional<Bar> bar(Fields item) {
        item.require("length", EXAMPLE);
        double length = item.read("length", 0.0, Measured.size(units));
        double kerf = item.read("kerf", 0.0, Measured.notBelowZero(units));
        double trim = item.read("trim", 0.0, Measured.notBelowZero(units));
        Terms terms = TermsReader.read(item, "price", "mass-per-metre");
        item.close();
        if (length == 0 || !item.sound("kerf") || !item.sound("trim")) {
            return Optional.empty();
        }
        if (length <= 2 * trim) {
            item.refuse("trim", new Refusal(Code.IMPOSSIBLE, "the trims use up the bar.", "Make trim smaller."));
            return Optional.empty();
        }
        return Optional.of(new Bar(length, kerf, trim, terms));
    }
}
