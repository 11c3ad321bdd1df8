package dev.calotte.compare;

import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Hub;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Size;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** How low the rows of panels reach, where rows exist: a class I breakdown with a vertex up. */
final class RowLevels {

    /** The lowest height of each row of hubs over the centre, as a part of the radius. */
    private final double[] levels;

    RowLevels(Solid solid, Breakdown breakdown) {
        // a tetrahedron's base face holds hubs farther from the crown than its rows reach
        int rows = solid.rowsPerFrequency() * breakdown.frequency();
        Dome whole = Dome.of(DomeSpec.of(solid, breakdown, Size.radius(1)));
        levels = new double[rows + 1];
        Arrays.fill(levels, Double.POSITIVE_INFINITY);
        for (Hub hub : whole.hubs()) {
            int row = Math.min(hub.row(), rows);
            levels[row] = Math.min(levels[row], hub.position().getZ());
        }
    }

    /** The rows whose lower end is nearest to a level, the nearest first; never the whole sphere. */
    List<Keep.Rows> nearest(double level, int most) {
        List<Integer> rows =
                new ArrayList<>(IntStream.range(1, levels.length - 1).boxed().toList());
        rows.sort(Comparator.comparingDouble(row -> Math.rint(1e9 * Math.abs(levels[row] - level))));
        return rows.stream().limit(most).map(this::fraction).toList();
    }

    private Keep.Rows fraction(int rows) {
        int of = levels.length - 1;
        int divisor = BigInteger.valueOf(rows).gcd(BigInteger.valueOf(of)).intValue();
        return new Keep.Rows(rows / divisor, of / divisor);
    }
}
