package dev.calotte.nest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Looks for the shortest period in which some parts can be repeated along a roll. */
final class BlockSearch {

    /** A random start is tried at so dense a layout first. */
    private static final double DENSE = 0.7;

    private static final double FIRST_SHARE = 0.01;
    private static final int PATIENCE = 20;

    /** A new start begins shorter than the best by this part. */
    private static final double BETTER = 1e-5;

    private final Kinds kinds;
    private final Kinds faceUp;
    private final double width;
    private final double spacing;

    BlockSearch(Kinds kinds, double width, double spacing) {
        this.kinds = kinds;
        this.faceUp = kinds.areMirrored() ? kinds.faceUp() : kinds;
        this.width = width;
        this.spacing = spacing;
    }

    /** The best block found with so many descents; null if none was found. */
    Block find(List<Integer> counts, int budget) {
        int[] kindOf = SheetPattern.kindOf(counts);
        double area = 0;
        for (int kind : kindOf) {
            area += kinds.piece(kind).outline().area();
        }
        double period = area / width / DENSE;
        List<Spot> best = List.of();
        int steps = 0;
        for (int start = 0; steps < budget; start++) {
            // where parts may lie face down, every second start leaves them face up: there is less to choose wrongly
            Kinds some = start % 2 == 0 ? kinds : faceUp;
            Shaking shaking = new Shaking(some, kindOf, spacing, counts.hashCode() * 31L + start);
            shaking.within(period, width, true).scatter();
            if (shaking.settle(Math.min(PATIENCE, budget - steps))) {
                Squeeze squeeze = new Squeeze(shaking, width, true).from(shaking.spots(), period);
                squeeze.run(FIRST_SHARE, PATIENCE, budget - steps - shaking.steps());
                best = squeeze.spots();
                period = squeeze.length() * (1 - BETTER);
            } else if (best.isEmpty()) {
                period *= 1.02;
            }
            steps += shaking.steps();
        }
        return best.isEmpty() ? null : block(counts, period / (1 - BETTER), best);
    }

    private Block block(List<Integer> counts, double period, List<Spot> spots) {
        List<Spot> within = new ArrayList<>();
        for (Spot spot : spots) {
            within.add(spot.moved(-Math.floor(middle(spot) / period) * period, 0));
        }
        within.sort(Comparator.comparingDouble(this::middle));
        return new Block(counts, period, within);
    }

    private double middle(Spot spot) {
        return kinds.outline(spot).corners().stream()
                .mapToDouble(corner -> corner.getX())
                .average()
                .orElseThrow();
    }
}
