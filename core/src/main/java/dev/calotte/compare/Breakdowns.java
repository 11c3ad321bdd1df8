package dev.calotte.compare;

import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.math3.util.FastMath;

/**
 * The breakdowns that divide a sphere into about as many panels as the own one.
 *
 * @param own the own breakdown; its mirror image is never listed beside it
 * @param panels how many panels the whole own sphere has
 */
record Breakdowns(Breakdown own, long panels) {

    /** The most panels of a whole sphere that is compared. */
    static final long MOST_PANELS = 20_000;

    /** A tetrahedron of that many panels has no higher frequency. */
    private static final int MOST_PARTS = 70;

    /** The nearest in number of panels first; of two equally near the one of fewer. */
    List<Breakdown> nearest(Solid solid, int classNumber, int most) {
        return all(classNumber)
                .filter(breakdown -> count(solid, breakdown) <= MOST_PANELS)
                .sorted(Comparator.comparingDouble((Breakdown breakdown) -> away(solid, breakdown))
                        .thenComparingLong(Breakdown::triangulationNumber))
                .limit(most)
                .toList();
    }

    private Stream<Breakdown> all(int classNumber) {
        IntStream parts = IntStream.rangeClosed(1, MOST_PARTS);
        return switch (classNumber) {
            case 1 -> parts.mapToObj(n -> oriented(n, 0));
            case 2 -> parts.mapToObj(n -> new Breakdown(n, n));
            default -> parts.boxed().flatMap(b -> IntStream.range(1, b).mapToObj(c -> oriented(b, c)));
        };
    }

    private Breakdown oriented(int more, int less) {
        return own.b() < own.c() ? new Breakdown(less, more) : new Breakdown(more, less);
    }

    /** How many times more panels, or fewer; rounded, so that equally near ones are equal. */
    private double away(Solid solid, Breakdown breakdown) {
        double times = (double) count(solid, breakdown) / panels;
        return Math.rint(1e9 * Math.abs(FastMath.log(times)));
    }

    static long count(Solid solid, Breakdown breakdown) {
        return solid.faceCount() * breakdown.triangulationNumber();
    }
}
