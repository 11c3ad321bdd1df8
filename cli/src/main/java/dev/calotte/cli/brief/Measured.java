package dev.calotte.cli.brief;

import dev.calotte.problem.Problem.Code;
import dev.calotte.units.UnitSystem;
import java.util.function.Function;

/** Reads lengths and areas within the bounds of what can be built. */
final class Measured {

    private static final double LEAST_MM = 1;
    private static final double MOST_MM = 1e6;
    private static final double LEAST_MM2 = 1;
    private static final double MOST_MM2 = 1e12;

    private Measured() {}

    /** A length that a dome is sized by, in millimetres. */
    static Function<Node, Double> size(UnitSystem units) {
        return Values.length(units).andThen(mm -> between(mm, LEAST_MM, MOST_MM, "1 mm", "1 km"));
    }

    /** An area that a dome is sized by, in square millimetres. */
    static Double floorArea(Node node) {
        return between(Values.area().apply(node), LEAST_MM2, MOST_MM2, "1 mm²", "1 km²");
    }

    /** A length that may be 0, in millimetres. */
    static Function<Node, Double> notBelowZero(UnitSystem units) {
        return ofEitherSign(units).andThen(mm -> {
            if (mm < 0) {
                throw new Refusal(Code.IMPOSSIBLE, "the length is below 0.", "Write 0 mm or more.");
            }
            return mm;
        });
    }

    /** A height above or below something, in millimetres. */
    static Function<Node, Double> ofEitherSign(UnitSystem units) {
        return Values.length(units).andThen(mm -> {
            between(Math.max(Math.abs(mm), LEAST_MM), LEAST_MM, MOST_MM, "1 mm", "1 km");
            return mm;
        });
    }

    private static double between(double value, double least, double most, String leastText, String mostText) {
        String mend = "Write something between " + leastText + " and " + mostText + ".";
        if (value <= 0) {
            throw new Refusal(Code.IMPOSSIBLE, "no dome has a size of 0 or less.", mend);
        }
        if (value < least) {
            throw new Refusal(Code.IMPOSSIBLE, "the size is less than " + leastText + ".", mend);
        }
        if (value > most) {
            throw new Refusal(Code.TOO_LARGE, "the size is more than " + mostText + ".", mend);
        }
        return value;
    }
}
