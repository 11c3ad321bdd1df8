package dev.calotte.cli.brief;

import dev.calotte.problem.Problem.Code;
import dev.calotte.units.UnitSystem;
import java.util.List;
import java.util.function.Function;

/** Reads lengths and areas within the bounds of what can be built. */
final class Measured {

    private static final Bounds LENGTHS = new Bounds(1, "1 mm", 1e6, "1 km");
    private static final Bounds LINES = new Bounds(0.001, "0.001 mm", 10, "10 mm");
    private static final Bounds AREAS = new Bounds(1, "1 mm²", 1e12, "1 km²");

    private static final Bounds BOARDS = new Bounds(0.1, "0.1 mm", 100, "100 mm");

    private Measured() {}

    private record Bounds(double least, String leastText, double most, String mostText) {

        double check(double value, Node node) {
            String text = Values.text(node);
            String mend = "Write something from " + leastText + " to " + mostText + ".";
            if (value <= 0) {
                throw new Refusal(Code.IMPOSSIBLE, text + " is not above 0.", mend);
            }
            if (value < least) {
                throw new Refusal(Code.IMPOSSIBLE, text + " is less than " + leastText + ".", mend);
            }
            return checkMost(value, node);
        }

        double checkMost(double value, Node node) {
            if (Math.abs(value) > most) {
                String what = Values.text(node) + " is more than " + mostText + ".";
                throw new Refusal(Code.TOO_LARGE, what, "Check the number and its unit.");
            }
            return value;
        }
    }

    /** A length that a dome is sized by, in millimetres. */
    static Function<Node, Double> size(UnitSystem units) {
        return node -> LENGTHS.check(Values.length(units).apply(node), node);
    }

    /** How wide a line is drawn, in millimetres; below a thousandth a file would round it to nothing. */
    static Function<Node, Double> lineWidth(UnitSystem units) {
        return node -> LINES.check(Values.length(units).apply(node), node);
    }

    /** How thick a board or card is, in millimetres. */
    static Function<Node, Double> thin(UnitSystem units) {
        return node -> BOARDS.check(Values.length(units).apply(node), node);
    }

    /** An area that a dome is sized by, in square millimetres. */
    static Double floorArea(Node node) {
        return AREAS.check(Values.area().apply(node), node);
    }

    /** Two sizes in a list, in millimetres. */
    static Function<Node, List<Double>> pair(UnitSystem units, String example) {
        return node -> {
            if (node instanceof Node.Sequence list && list.items().size() == 2) {
                return list.items().stream().map(size(units)).toList();
            }
            throw Refusal.wrong(
                    node instanceof Node.Sequence list
                            ? "a list of " + list.items().size() + " stands here."
                            : Seen.sort(node),
                    example);
        };
    }

    /** A length that may be 0, in millimetres. */
    static Function<Node, Double> notBelowZero(UnitSystem units) {
        return node -> {
            double mm = ofEitherSign(units).apply(node);
            if (mm < 0) {
                throw new Refusal(Code.IMPOSSIBLE, Values.text(node) + " is below 0.", "Write 0 mm or more.");
            }
            return mm;
        };
    }

    /** A height above or below something, in millimetres. */
    static Function<Node, Double> ofEitherSign(UnitSystem units) {
        return node -> LENGTHS.checkMost(Values.length(units).apply(node), node);
    }
}
