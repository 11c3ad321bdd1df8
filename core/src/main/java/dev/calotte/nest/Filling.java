package dev.calotte.nest;

import dev.calotte.geometry.ConvexPolygon;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * Fills a field part by part: each goes where its far end is nearest to the field's beginning, then lowest. Such a place
 * is a corner of the region of free places: a corner of what one part or the edge forbids, or a crossing of two such
 * outlines. Only what lies near the end of what is there is looked at.
 */
final class Filling {

    private static final double ROUNDING = 1e-7;

    /** Places so near to a limit are looked at, so that no rounding hides one. */
    private static final double SLACK = 1e-5;

    private static final int PAIRS_A_STEP = 100;
    private static final Vector2D RIGHT = new Vector2D(1, 0);
    private static final Vector2D UP = new Vector2D(0, 1);

    private final Kinds kinds;
    private final Field field;
    private final double length;
    private final double width;
    private final double spacing;
    private final Manner manner;
    private final List<Spot> spots = new ArrayList<>();
    private final List<ConvexPolygon> outlines = new ArrayList<>();

    private double from;
    private double minX;
    private double maxX;
    private double minY;
    private double maxY;
    private List<NoFit> near = List.of();
    private double bestX;
    private double bestY;
    private int pairs;
    private Spot best;
    private double bestEnd;
    private double bestLow;

    Filling(Kinds kinds, Field field, Manners manners) {
        this.kinds = kinds;
        this.field = field;
        this.length = field.length();
        this.width = field.width();
        this.spacing = manners.spacing();
        this.manner = manners.manner();
    }

    List<Spot> spots() {
        return spots;
    }

    /** How many steps it took; so many pairs of parts take as long as one. */
    int steps() {
        return pairs / PAIRS_A_STEP;
    }

    /** How far what is there reaches. */
    double end() {
        double end = 0;
        for (ConvexPolygon outline : outlines) {
            end = Math.max(end, outline.reach(RIGHT));
        }
        return end;
    }

    /** Adds a part if there is room for it; says whether there was. */
    boolean add(int kind) {
        best = null;
        bestEnd = Double.POSITIVE_INFINITY;
        bestLow = Double.POSITIVE_INFINITY;
        boolean held = tryAll(kind, kinds.flush(kind, manner));
        if (field.isIrregular()) {
            tryAll(kind, kinds.alongside(kind, field));
        }
        if (!held) {
            tryAll(kind, kinds.askew(kind, field));
        }
        if (best != null) {
            put(best);
        }
        return best != null;
    }

    /** Tries ways to lay a part; says whether the field, if it were empty, would hold it in one of them. */
    private boolean tryAll(int kind, List<Stand> stands) {
        List<ConvexPolygon> last = last();
        boolean held = false;
        for (Stand stand : stands) {
            ConvexPolygon part = kinds.outline(kind, stand, 0, 0);
            held |= Room.holds(field, part);
            if (find(part, last, bestEnd)) {
                double end = bestX + part.reach(RIGHT);
                double low = bestY - part.reach(UP.negate());
                if (end < bestEnd - ROUNDING * width || (end < bestEnd + ROUNDING * width && low < bestLow)) {
                    best = new Spot(kind, stand.mirrored(), stand.turnRad(), bestX, bestY);
                    bestEnd = end;
                    bestLow = low;
                }
            }
        }
        return held;
    }

    void put(Spot spot) {
        spots.add(spot);
        outlines.add(kinds.outline(spot));
    }

    private List<ConvexPolygon> last() {
        // an irregular field is small, and hollows before its end are worth the work
        from = field.isIrregular() ? 0 : Math.max(0, end() - 2.5 * (kinds.widest() + spacing));
        return outlines.stream().filter(outline -> outline.reach(RIGHT) > from).toList();
    }

    /** Finds the best place for a part turned so, if its end is not beyond the limit. */
    private boolean find(ConvexPolygon part, List<ConvexPolygon> last, double limit) {
        // what ends before is not looked at, so nothing may begin there
        double beyondX = Room.beyondMm(part.extent(RIGHT), length);
        double beyondY = Room.beyondMm(part.extent(UP), width);
        minX = part.reach(RIGHT.negate()) + (from > 0 ? from + spacing : -beyondX);
        maxX = Math.min(length + beyondX, limit + ROUNDING * width) - part.reach(RIGHT);
        minY = part.reach(UP.negate()) - beyondY;
        maxY = width + beyondY - part.reach(UP);
        bestX = Double.POSITIVE_INFINITY;
        bestY = Double.POSITIVE_INFINITY;
        if (beyondX + beyondY == Double.POSITIVE_INFINITY || maxX < minX - ROUNDING || maxY < minY - ROUNDING) {
            return false;
        }
        pairs += last.size() + field.walls().pieces().size();
        near = Stream.concat(
                        field.walls().pieces().stream().map(wall -> NoFit.of(wall, part, 0)),
                        last.stream().map(fast -> NoFit.of(fast, part, spacing)))
                .toList();
        consider(minX, minY);
        consider(minX, maxY);
        for (int i = 0; i < near.size(); i++) {
            alone(near.get(i));
            for (int j = 0; j < i; j++) {
                crossings(near.get(i), near.get(j));
            }
        }
        return bestX < Double.POSITIVE_INFINITY;
    }

    private void alone(NoFit region) {
        for (int s = 0; s < region.size; s++) {
            int t = (s + 1) % region.size;
            consider(region.x[s], region.y[s]);
            onLevel(region, s, t, minY);
            onLevel(region, s, t, maxY);
            double share = (minX - region.x[s]) / (region.x[t] - region.x[s]);
            if (share >= 0 && share <= 1) {
                consider(minX, region.y[s] + share * (region.y[t] - region.y[s]));
            }
        }
    }

    private void onLevel(NoFit region, int s, int t, double level) {
        double share = (level - region.y[s]) / (region.y[t] - region.y[s]);
        if (share >= 0 && share <= 1) {
            consider(region.x[s] + share * (region.x[t] - region.x[s]), level);
        }
    }

    /** Only what two outlines cross in where both are, and where a place could still be the best. */
    private void crossings(NoFit a, NoFit b) {
        double left = Math.max(Math.max(a.left(), b.left()), minX) - SLACK;
        double right = Math.min(Math.min(a.right(), b.right()), Math.min(bestX, maxX)) + SLACK;
        double low = Math.max(Math.max(a.low(), b.low()), minY) - SLACK;
        double high = Math.min(Math.min(a.high(), b.high()), maxY) + SLACK;
        if (left > right || low > high || !a.meets(b)) {
            return;
        }
        for (int s = 0; s < a.size; s++) {
            int t = s + 1 == a.size ? 0 : s + 1;
            if (within(a.x[s], a.x[t], left, right) && within(a.y[s], a.y[t], low, high)) {
                crossings(a, s, t, b);
            }
        }
    }

    private static boolean within(double from, double to, double least, double most) {
        return from < to ? to >= least && from <= most : from >= least && to <= most;
    }

    private void crossings(NoFit a, int s, int t, NoFit b) {
        double ux = a.x[t] - a.x[s];
        double uy = a.y[t] - a.y[s];
        for (int p = 0; p < b.size; p++) {
            int q = p + 1 == b.size ? 0 : p + 1;
            double vx = b.x[q] - b.x[p];
            double vy = b.y[q] - b.y[p];
            double cross = ux * vy - uy * vx;
            double dx = b.x[p] - a.x[s];
            double dy = b.y[p] - a.y[s];
            double share = (dx * vy - dy * vx) / cross;
            double other = (dx * uy - dy * ux) / cross;
            if (share >= 0 && share <= 1 && other >= 0 && other <= 1) {
                consider(a.x[s] + share * ux, a.y[s] + share * uy);
            }
        }
    }

    private void consider(double x, double y) {
        boolean better = x < bestX - ROUNDING || (x < bestX + ROUNDING && y < bestY);
        if (!better || x < minX - ROUNDING || x > maxX + ROUNDING || y < minY - ROUNDING || y > maxY + ROUNDING) {
            return;
        }
        for (NoFit region : near) {
            if (region.forbids(x, y)) {
                return;
            }
        }
        bestX = x;
        bestY = y;
    }
}
