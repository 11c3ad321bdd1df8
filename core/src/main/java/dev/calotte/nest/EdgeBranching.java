package dev.calotte.nest;

import dev.calotte.geometry.ConvexPolygon;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Decides whether parts that keep their grain lie in a field together: all ways to lay them, and for each a branch and
 * bound on which side of each other two parts lie (V. Milenkovic, "Multiple translational containment", 1999, in other
 * words). A linear programme places the parts; the two that are most in each other's way are kept apart by each
 * half-plane in turn.
 */
final class EdgeBranching {

    /** What was found. */
    enum Verdict {
        FITS,
        CANNOT,
        OPEN
    }

    private final Kinds kinds;
    private final int[] kindOf;
    private final Field field;
    private final double spacing;
    private int nodesLeft;
    private int nodes;
    private boolean open;
    private List<Spot> found;

    private List<Stand> stands;
    private SidePlanes places;
    private double[][][][] planes;

    EdgeBranching(Kinds kinds, int[] kindOf, Field field, double spacing) {
        this.kinds = kinds;
        this.kindOf = kindOf.clone();
        this.field = field;
        this.spacing = spacing;
    }

    /** Decides with so many linear programmes at most. */
    Verdict decide(int most) {
        nodesLeft = most;
        lay(new ArrayList<>());
        if (found != null) {
            return Verdict.FITS;
        }
        return open || nodesLeft <= 0 ? Verdict.OPEN : Verdict.CANNOT;
    }

    /** How many linear programmes it took. */
    int nodes() {
        return nodes;
    }

    /** Where the parts lie if they fit. */
    List<Spot> spots() {
        return found;
    }

    private boolean over() {
        return found != null || nodesLeft <= 0;
    }

    private void lay(List<Stand> chosen) {
        int i = chosen.size();
        if (i == kindOf.length) {
            stands = chosen;
            prepare();
            return;
        }
        List<Stand> ways = kinds.stands(kindOf[i]);
        // equal parts change places freely, so their stands need not fall
        int from = i > 0 && kindOf[i] == kindOf[i - 1] ? ways.indexOf(chosen.get(i - 1)) : 0;
        for (Stand way : ways.subList(from, ways.size())) {
            if (!over()) {
                List<Stand> more = new ArrayList<>(chosen);
                more.add(way);
                lay(more);
            }
        }
    }

    private void prepare() {
        List<ConvexPolygon> outlines = new ArrayList<>();
        for (int i = 0; i < kindOf.length; i++) {
            outlines.add(kinds.outline(kindOf[i], stands.get(i), 0, 0));
        }
        places = new SidePlanes(outlines, field);
        planes = new double[kindOf.length][kindOf.length][][];
        for (int i = 0; i < kindOf.length; i++) {
            for (int j = i + 1; j < kindOf.length; j++) {
                List<double[]> all =
                        NoFit.of(outlines.get(i), outlines.get(j), spacing).halfPlanes(spacing);
                int first = i;
                int second = j;
                all.removeIf(plane -> !places.allows(first, second, plane));
                planes[i][j] = all.toArray(new double[0][]);
            }
            if (i > 0 && kindOf[i] == kindOf[i - 1] && stands.get(i).equals(stands.get(i - 1))) {
                places.push(i - 1, i, new double[] {1, 0, 0});
            }
        }
        if (places.hasRoom()) {
            search();
        } else {
            nodesLeft--;
            nodes++;
        }
    }

    private void search() {
        nodesLeft--;
        nodes++;
        double[] at = places.solve();
        if (at == null) {
            return;
        }
        int[] pair = worst(at);
        if (pair == null) {
            settle(at);
            return;
        }
        double[][] ways = planes[pair[0]][pair[1]].clone();
        Arrays.sort(ways, (a, b) -> Double.compare(lack(a, pair, at), lack(b, pair, at)));
        for (double[] way : ways) {
            if (!over()) {
                places.push(pair[0], pair[1], way);
                search();
                places.pop();
            }
        }
    }

    private static double lack(double[] plane, int[] pair, double[] at) {
        double dx = at[2 * pair[1]] - at[2 * pair[0]];
        double dy = at[2 * pair[1] + 1] - at[2 * pair[0] + 1];
        return plane[2] - plane[0] * dx - plane[1] * dy;
    }

    /** The pair that is most in each other's way; null if all are on the right side of some half-plane. */
    private int[] worst(double[] at) {
        int[] worst = null;
        double most = 10 * SidePlanes.ROUNDING_MM;
        for (int i = 0; i < kindOf.length; i++) {
            for (int j = i + 1; j < kindOf.length; j++) {
                int[] pair = {i, j};
                double least = Double.POSITIVE_INFINITY;
                for (double[] plane : planes[i][j]) {
                    least = Math.min(least, lack(plane, pair, at));
                }
                if (least > most) {
                    most = least;
                    worst = pair;
                }
            }
        }
        return worst;
    }

    /** The half-planes are a little too lenient at corners; what they allow is pushed apart, or stays open. */
    private void settle(double[] at) {
        List<Spot> spots = new ArrayList<>();
        for (int i = 0; i < kindOf.length; i++) {
            Stand stand = stands.get(i);
            spots.add(new Spot(kindOf[i], stand.mirrored(), stand.turnRad(), at[2 * i], at[2 * i + 1]));
        }
        Shaking shaking = new Shaking(kinds, kindOf, spacing, 0).within(field.length(), field.width(), false);
        shaking.take(spots);
        if (shaking.settle(0)) {
            found = shaking.spots();
        } else {
            open = true;
        }
    }
}
