package dev.calotte.nest;

import dev.calotte.geometry.ConvexPolygon;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.apache.commons.math3.util.FastMath;

/**
 * Runs of blocks one after the other along a roll. Each run may begin at any of its parts and be turned end for end; it
 * is pushed against what is there, and the way that ends first is kept.
 */
final class Chain {

    private static final Vector2D RIGHT = new Vector2D(1, 0);

    /** So many parts at the end of a run may stand in the way of so many of the next. */
    private static final int NEAR = 14;

    private static final int[][] ORDERS = {{0, 1, 2}, {0, 2, 1}, {1, 0, 2}, {1, 2, 0}, {2, 0, 1}, {2, 1, 0}};

    private final Kinds kinds;
    private final double width;
    private final double spacing;
    private List<Spot> spots = List.of();
    private int[] left = {};

    Chain(Kinds kinds, double width, double spacing) {
        this.kinds = kinds;
        this.width = width;
        this.spacing = spacing;
    }

    /** Lays the runs, three or fewer in every order; what is more than is needed is left out. */
    List<Spot> lay(BlockMix.Runs runs, int[] need) {
        int count = runs.blocks().size();
        List<Spot> best = List.of();
        for (int[] order : count <= ORDERS[0].length
                ? ORDERS
                : new int[][] {IntStream.range(0, count).toArray()}) {
            spots = new ArrayList<>();
            left = need.clone();
            for (int run : order) {
                if (run < count) {
                    append(runs.blocks().get(run), runs.times().get(run));
                }
            }
            if (best.isEmpty() || end(spots) < end(best)) {
                best = spots;
            }
        }
        return best;
    }

    private void append(Block block, int times) {
        List<Spot> best = List.of();
        double bestEnd = Double.POSITIVE_INFINITY;
        for (int first = 0; first < block.size(); first++) {
            for (boolean turned : new boolean[] {false, true}) {
                List<Spot> run = pushed(needed(run(block, times, first, turned)));
                double end = end(run);
                if (end < bestEnd) {
                    best = run;
                    bestEnd = end;
                }
            }
        }
        best.forEach(spot -> left[spot.kind()]--);
        spots.addAll(best);
    }

    private List<Spot> run(Block block, int times, int first, boolean turned) {
        List<Spot> run = new ArrayList<>();
        for (int n = first; n < first + times * block.size(); n++) {
            int repeat = n / block.size();
            Spot spot = block.spots().get(n % block.size()).moved(repeat * block.period(), 0);
            if (turned) {
                double turn = spot.turnRad() + FastMath.PI;
                run.add(0, new Spot(spot.kind(), spot.mirrored(), turn, -spot.x(), width - spot.y()));
            } else {
                run.add(spot);
            }
        }
        return run;
    }

    private List<Spot> needed(List<Spot> run) {
        int[] there = left.clone();
        List<Spot> needed = new ArrayList<>();
        for (Spot spot : run) {
            if (there[spot.kind()]-- > 0) {
                needed.add(spot);
            }
        }
        return needed;
    }

    private List<Spot> pushed(List<Spot> run) {
        List<ConvexPolygon> last = spots.subList(Math.max(0, spots.size() - NEAR), spots.size()).stream()
                .map(kinds::outline)
                .toList();
        double move = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < run.size(); i++) {
            ConvexPolygon part = kinds.outline(run.get(i));
            move = Math.max(move, part.reach(RIGHT.negate()));
            for (int j = 0; i < NEAR && j < last.size(); j++) {
                move = Math.max(move, NoFit.of(last.get(j), part, spacing).clearAlong());
            }
        }
        double by = move;
        return run.stream().map(spot -> spot.moved(by, 0)).toList();
    }

    private double end(List<Spot> run) {
        return run.stream()
                .mapToDouble(spot -> kinds.outline(spot).reach(RIGHT))
                .max()
                .orElse(0);
    }
}
