package dev.calotte.cli.brief;

import dev.calotte.dome.Size;
import dev.calotte.dome.Size.Measure;
import dev.calotte.parts.Joinery;
import dev.calotte.problem.Problem.Code;
import dev.calotte.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Reads the section {@code size}, which takes exactly one measure. */
final class SizeReader {

    private static final String LATER = "widest-from";
    private static final Size STOPGAP = Size.radius(1000);

    private final Fields fields;
    private final List<String> keys = new ArrayList<>();
    private Size size = STOPGAP;
    private Optional<String> widestFor = Optional.empty();

    private SizeReader(Fields fields) {
        this.fields = fields;
    }

    static SizeReader read(Fields fields, UnitSystem units, Joinery joinery, List<Covering> covers) {
        SizeReader reader = new SizeReader(fields);
        reader.takeCover(covers);
        reader.read(units, 2 * joinery.endMm(true, 0));
        return reader;
    }

    /** The measure; a stopgap where a cover decides. */
    Size size() {
        return size;
    }

    /** The name of the cover whose stock decides the size. */
    Optional<String> widestFor() {
        return widestFor;
    }

    private void takeCover(List<Covering> covers) {
        keys.add("widest-for");
        widestFor = fields.read("widest-for", widestFor, node -> Optional.of(cover(node, covers)));
    }

    private static String cover(Node node, List<Covering> covers) {
        String name = Values.text(node);
        List<String> known = covers.stream().map(c -> c.cover().name()).toList();
        if (!known.contains(name)) {
            throw Refusal.wrong(
                    Seen.text(name) + " is not a cover of this brief.",
                    known.isEmpty()
                            ? "Describe it below covers:."
                            : "The covers are " + Values.listed(known, "and") + ".");
        }
        if (covers.get(known.indexOf(name)).stocks().isEmpty()) {
            throw new Refusal(
                    Code.MISSING, name + " has no stock to be cut from.", "Write its stock, below covers: as well.");
        }
        return name;
    }

    private void read(UnitSystem units, double gapsMm) {
        Function<Node, Double> length = Measured.size(units);
        take("radius", Measure.RADIUS, length);
        take("floor-diameter", Measure.FLOOR_DIAMETER, length);
        take("height", Measure.HEIGHT, length);
        take("floor-area", Measure.FLOOR_AREA, Measured::floorArea);
        take("longest-strut", Measure.LONGEST_STRUT, length);
        take("longest-cut", Measure.LONGEST_STRUT, length.andThen(mm -> mm + gapsMm));
        fields.later(LATER);
        keys.add(LATER);
        fields.requireOne(keys, "Write one, for example size: { floor-diameter: 6.4 m }.");
        fields.close();
    }

    private void take(String key, Measure measure, Function<Node, Double> reader) {
        keys.add(key);
        size = fields.read(key, size, reader.andThen(value -> new Size(measure, value)));
    }
}
