package dev.calotte.cli.brief;

import dev.calotte.dome.Size;
import dev.calotte.dome.Size.Measure;
import dev.calotte.parts.Joinery;
import dev.calotte.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Reads the section {@code size}, which takes exactly one measure. */
final class SizeReader {

    private static final String[] LATER = {"widest-for", "widest-from"};
    private static final Size STOPGAP = Size.radius(1000);

    private final Fields fields;
    private final List<String> keys = new ArrayList<>();
    private Size size = STOPGAP;

    private SizeReader(Fields fields) {
        this.fields = fields;
    }

    static Size read(Fields fields, UnitSystem units, Joinery joinery) {
        return new SizeReader(fields).read(units, 2 * joinery.hubGapMm());
    }

    private Size read(UnitSystem units, double gapsMm) {
        Function<Node, Double> length = Measured.size(units);
        take("radius", Measure.RADIUS, length);
        take("floor-diameter", Measure.FLOOR_DIAMETER, length);
        take("height", Measure.HEIGHT, length);
        take("floor-area", Measure.FLOOR_AREA, Measured::floorArea);
        take("longest-strut", Measure.LONGEST_STRUT, length);
        take("longest-cut", Measure.LONGEST_STRUT, length.andThen(mm -> mm + gapsMm));
        fields.later(LATER);
        keys.addAll(List.of(LATER));
        fields.requireOne(keys, "Write one, for example size: { floor-diameter: 6.4 m }.");
        fields.close();
        return size;
    }

    private void take(String key, Measure measure, Function<Node, Double> reader) {
        keys.add(key);
        size = fields.read(key, size, reader.andThen(value -> new Size(measure, value)));
    }
}
