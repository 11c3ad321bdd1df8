package dev.calotte.cli.brief;

import dev.calotte.document.StrutSection;
import dev.calotte.problem.Problem;
import dev.calotte.problem.Problem.Code;
import dev.calotte.solid.Bed;
import dev.calotte.solid.JigSpec;
import dev.calotte.solid.JigSpec.Sockets;
import dev.calotte.units.UnitSystem;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Reads the section {@code jigs}. */
final class JigsReader {

    private static final String STRUT = "Write for example round 23.4 mm, square 30 mm or rectangle 45 mm x 95 mm.";
    private static final String BED = "Write length, width and height, as in bed: [220 mm, 220 mm, 250 mm].";
    private static final double USUAL_DEPTH_MM = 12;

    private final Fields jigs;
    private final UnitSystem units;

    private JigsReader(Fields jigs, UnitSystem units) {
        this.jigs = jigs;
        this.units = units;
    }

    /** What jigs are made for; nothing if the section is not there. */
    static Optional<JigSpec> read(Fields top, UnitSystem units) {
        boolean wanted = top.has("jigs");
        JigSpec spec = new JigsReader(top.section("jigs"), units).spec();
        return wanted ? Optional.of(spec) : Optional.empty();
    }

    private JigSpec spec() {
        Function<Node, Double> length = Measured.notBelowZero(units);
        JigSpec spec = new JigSpec(
                jigs.read("strut", Optional.empty(), node -> Optional.of(section(node))),
                jigs.read("clearance", JigSpec.USUAL_CLEARANCE_MM, length),
                jigs.read("wall", JigSpec.USUAL_WALL_MM, length),
                jigs.read("bed", Bed.USUAL, this::bed),
                sockets());
        jigs.close();
        spec.problems().forEach(this::refuse);
        return spec;
    }

    private void refuse(Problem problem) {
        String key = problem.where().substring("jigs.".length());
        Refusal refusal = new Refusal(problem.code(), problem.what(), problem.mend());
        jigs.refuse(key.startsWith("sockets.") ? "sockets" : key, refusal);
    }

    private Optional<Sockets> sockets() {
        boolean wanted = jigs.has("sockets");
        Fields sockets = jigs.section("sockets");
        if (wanted) {
            sockets.require("strut", STRUT);
        }
        Sockets read = new Sockets(
                sockets.read("strut", StrutSection.round(USUAL_DEPTH_MM), this::section),
                sockets.read("depth", USUAL_DEPTH_MM, Measured.size(units)),
                sockets.read("scale", 1.0, Numbers::scale));
        sockets.close();
        return wanted ? Optional.of(read) : Optional.empty();
    }

    private Bed bed(Node node) {
        if (!(node instanceof Node.Sequence list) || list.items().size() != 3) {
            throw Refusal.wrong(
                    node instanceof Node.Sequence some
                            ? "a list of " + some.items().size() + " stands here."
                            : Seen.sort(node),
                    BED);
        }
        List<Double> sizes = list.items().stream().map(Measured.size(units)).toList();
        return new Bed(sizes.get(0), sizes.get(1), sizes.get(2));
    }

    /** A word for the shape, then one length or two with an x between them. */
    private StrutSection section(Node node) {
        String text = Values.text(node);
        int space = text.indexOf(' ');
        String shape = space < 0 ? text : text.substring(0, space);
        String[] sizes = space < 0 ? new String[0] : text.substring(space + 1).split(" x ", -1);
        boolean two = shape.equals("rectangle");
        boolean known = two || shape.equals("round") || shape.equals("square");
        if (!known || sizes.length != (two ? 2 : 1)) {
            throw Refusal.wrong(Seen.text(text) + " is no strut.", STRUT);
        }
        double width = above0(node, sizes[0]);
        if (shape.equals("round")) {
            return StrutSection.round(width);
        }
        return StrutSection.rectangle(width, two ? above0(node, sizes[1]) : width);
    }

    private double above0(Node node, String text) {
        double mm = Measured.ofEitherSign(units).apply(new Node.Text(node.place(), text.strip()));
        if (mm <= 0) {
            throw new Refusal(Code.IMPOSSIBLE, Seen.text(text) + " is not above 0.", STRUT);
        }
        return mm;
    }
}
