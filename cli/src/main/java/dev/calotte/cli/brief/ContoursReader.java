package dev.calotte.cli.brief;

import dev.calotte.contour.Contours;
import dev.calotte.contour.Contours.Closing;
import dev.calotte.contour.Contours.SharedEdges;
import dev.calotte.contour.Contours.Start;
import dev.calotte.problem.Problem.Code;
import dev.calotte.units.UnitSystem;
import java.util.OptionalDouble;
import java.util.function.Function;

/** Reads how tools follow the lines of drawings. */
final class ContoursReader {

    private static final double COARSEST_MM = 10;

    private ContoursReader() {}

    static Contours read(Fields output, UnitSystem units) {
        Start start = output.read("start", Start.CORNER, Words.of(Start.values()));
        SharedEdges shared = output.read("shared-edges", SharedEdges.EACH, Words.of(SharedEdges.values()));
        Closing closing = output.read("closing", Closing.FLAG, Words.of(Closing.values()));
        OptionalDouble flatten = output.read("flatten", OptionalDouble.empty(), flatten(units));
        if (start == Start.EDGE && shared == SharedEdges.ONCE) {
            output.refuse(
                    "start",
                    new Refusal(
                            Code.CONFLICT,
                            "a cut that begins at an edge is for routers, and shared-edges: once leaves them no closed"
                                    + " outlines.",
                            "Write start: corner, or shared-edges: each with a spacing of at least the cutter's width."));
            return Contours.PLAIN;
        }
        return new Contours(start, flatten, shared, closing);
    }

    private static Function<Node, OptionalDouble> flatten(UnitSystem units) {
        return node -> {
            double mm = Values.length(units).apply(node);
            if (mm < Contours.LEAST_FLATTEN_MM || mm > COARSEST_MM) {
                throw new Refusal(
                        Code.IMPOSSIBLE,
                        Values.text(node) + " is no distance from chords to arcs.",
                        "Write something from 0.001 mm to 10 mm, for example 0.05 mm, or leave the key out to keep arcs.");
            }
            return OptionalDouble.of(mm);
        };
    }
}
