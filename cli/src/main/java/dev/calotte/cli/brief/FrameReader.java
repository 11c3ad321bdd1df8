package dev.calotte.cli.brief;

import dev.calotte.parts.Ends;
import dev.calotte.parts.HubGaps;
import dev.calotte.parts.HubPlate;
import dev.calotte.parts.Joinery;
import dev.calotte.problem.Problem;
import dev.calotte.problem.Problem.Code;
import dev.calotte.stock.Bar;
import dev.calotte.units.UnitSystem;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * Reads the section {@code frame}. Whether its values go together is asked only when each of them is sound.
 */
final class FrameReader {

    private static final String SECTION = "frame.";
    private static final String ENDS =
            "Write ends: { flatten: 40 mm, hole: 10 mm, hole-edge: 20 mm } or ends: { mitred: [45 mm, 95 mm] }.";
    private static final String GAPS = "Write hub-gap: 45 mm, or hub-gap: { base: 60 mm, 5: 45 mm, other: 50 mm }.";

    private final Fields frame;
    private final UnitSystem units;
    private final OutlineFiles outlines;
    private boolean sound = true;

    private FrameReader(Fields frame, UnitSystem units, OutlineFiles outlines) {
        this.frame = frame;
        this.units = units;
        this.outlines = outlines;
    }

    /**
     * What the section says.
     *
     * @param joinery how struts meet hubs; wherever a problem was noted it holds a stopgap
     * @param bars what they are cut from
     */
    record Frame(Joinery joinery, List<Bar> bars) {}

    static Frame read(Fields frame, UnitSystem units, OutlineFiles outlines) {
        List<Bar> bars = new BarReader(frame, units).bars();
        return new Frame(new FrameReader(frame, units, outlines).joinery(), bars);
    }

    private Joinery joinery() {
        Optional<HubGaps> gaps = hubGaps();
        double merge = read(frame, "merge-within", 0, Measured.notBelowZero(units));
        double tolerance = read(frame, "cut-tolerance", Joinery.USUAL_TOLERANCE_MM, Measured.notBelowZero(units));
        Ends ends = frame.has("ends") ? ends(frame.section("ends")) : absent("ends", new Ends.Plain());
        Optional<HubPlate> plate = frame.has("hub-plate")
                ? Optional.of(hubPlate(frame.section("hub-plate")))
                : absent("hub-plate", Optional.empty());
        frame.close();
        Joinery joinery = new Joinery(gaps, ends, merge, tolerance, plate);
        if (sound) {
            joinery.problems().forEach(this::refuse);
        }
        return joinery;
    }

    /** Makes a section known that is not there. */
    private <T> T absent(String key, T without) {
        frame.section(key);
        return without;
    }

    private void refuse(Problem problem) {
        frame.refuse(
                problem.where().substring(SECTION.length()),
                new Refusal(problem.code(), problem.what(), problem.mend()));
    }

    private Optional<HubGaps> hubGaps() {
        if (frame.isSection("hub-gap")) {
            return Optional.of(gapsByHub(frame.section("hub-gap")));
        }
        Function<Node, Double> length = Measured.notBelowZero(units);
        Optional<HubGaps> gaps =
                frame.read("hub-gap", Optional.empty(), length.andThen(mm -> Optional.of(HubGaps.all(mm))));
        sound &= frame.sound("hub-gap");
        return gaps;
    }

    private HubGaps gapsByHub(Fields fields) {
        ByHubReader<Double> read = ByHubReader.read(fields, Measured.notBelowZero(units), GAPS);
        sound &= read.sound();
        return HubGaps.of(read.given());
    }

    private Ends ends(Fields fields) {
        boolean mitred = fields.has("mitred");
        Ends.Mitred rails = fields.read("mitred", new Ends.Mitred(1, 1), this::rails);
        sound &= fields.sound("mitred");
        List<String> tube = List.of("flatten", "hole", "hole-edge");
        if (mitred && tube.stream().anyMatch(fields::has)) {
            fields.refuse(
                    "mitred",
                    new Refusal(Code.CONFLICT, "ends are either flattened or mitred.", "Keep one of the two."));
            sound = false;
        }
        if (!mitred) {
            tube.forEach(key -> fields.require(key, ENDS));
            sound &= tube.stream().allMatch(fields::has);
        }
        Ends.Flattened flattened = new Ends.Flattened(
                read(fields, "flatten", 2, this::above0),
                read(fields, "hole", 1, this::above0),
                read(fields, "hole-edge", 1, this::above0),
                optional(fields, "wall", this::above0));
        if (mitred && fields.has("wall")) {
            fields.refuse("wall", new Refusal(Code.CONFLICT, "timber rails have no wall.", "Leave it out."));
        }
        fields.close();
        return mitred ? rails : flattened;
    }

    /** Width and depth of a section, as a list of two. */
    private Ends.Mitred rails(Node node) {
        if (!(node instanceof Node.Sequence list) || list.items().size() != 2) {
            String seen = node instanceof Node.Sequence some
                    ? "a list of " + some.items().size() + " stands here."
                    : Seen.sort(node);
            throw Refusal.wrong(seen, "Write the width and the depth of the rails, as in mitred: [45 mm, 95 mm].");
        }
        return new Ends.Mitred(above0(list.items().get(0)), above0(list.items().get(1)));
    }

    private HubPlate hubPlate(Fields fields) {
        PlateReader reader = new PlateReader(fields, this::above0, outlines);
        HubPlate plate = reader.plate();
        sound &= reader.isSound();
        return plate;
    }

    private double read(Fields fields, String key, double fallback, Function<Node, Double> reader) {
        double mm = fields.read(key, fallback, reader);
        sound &= fields.sound(key);
        return mm;
    }

    private OptionalDouble optional(Fields fields, String key, Function<Node, Double> reader) {
        OptionalDouble mm = fields.read(key, OptionalDouble.empty(), reader.andThen(OptionalDouble::of));
        sound &= fields.sound(key);
        return mm;
    }

    private double above0(Node node) {
        double mm = Measured.ofEitherSign(units).apply(node);
        if (mm <= 0) {
            throw new Refusal(Code.IMPOSSIBLE, Values.text(node) + " is not above 0.", "Write something above 0 mm.");
        }
        return mm;
    }
}
