package dev.calotte.cli.brief;

import dev.calotte.dome.Size;
import dev.calotte.dome.Size.Measure;
import dev.calotte.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Reads the section {@code size}, which takes exactly one measure. */
final class SizeReader {

    private static final String WIDEST_FROM = "widest-from";
    private static final SizeWish STOPGAP = new SizeWish.Given(Size.radius(1000));

    private final Fields fields;
    private final List<String> keys = new ArrayList<>();
    private SizeWish wish = STOPGAP;

    private SizeReader(Fields fields) {
        this.fields = fields;
    }

    static SizeWish read(Fields fields, UnitSystem units, List<Covering> covers) {
        SizeReader reader = new SizeReader(fields);
        reader.read(units, covers);
        return reader.wish;
    }

    private void read(UnitSystem units, List<Covering> covers) {
        Function<Node, Double> length = Measured.size(units);
        measure(Measure.RADIUS, length);
        measure(Measure.FLOOR_DIAMETER, length);
        measure(Measure.HEIGHT, length);
        measure(Measure.FLOOR_AREA, Measured::floorArea);
        measure(Measure.LONGEST_STRUT, length);
        take("longest-cut", length.andThen(SizeWish.LongestCut::new));
        take(
                "widest-for",
                node -> new SizeWish.WidestFor(
                        CoverName.covering(node, covers).cover().name()));
        keys.add(WIDEST_FROM);
        if (fields.offers(WIDEST_FROM)) {
            wish = new SupplyReader(fields.section(WIDEST_FROM), units, covers)
                    .wish()
                    .orElse(wish);
        }
        fields.requireOne(keys, "Write one, for example size: { floor-diameter: 6.4 m }.");
        fields.close();
    }

    private void measure(Measure measure, Function<Node, Double> reader) {
        take(measure.key(), reader.andThen(value -> new SizeWish.Given(new Size(measure, value))));
    }

    private void take(String key, Function<Node, SizeWish> reader) {
        keys.add(key);
        wish = fields.read(key, wish, reader);
    }
}
