package dev.calotte.choose;

import dev.calotte.pattern.CutPiece;
import dev.calotte.pattern.Seams;
import dev.calotte.stock.Stock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where to divide a pattern so that all parts fit with the fewest seams. Each part is made as wide as the stock allows,
 * from the longest side up, so that the seams lie high, where they are short; only the last is lowered again where it
 * would leave a sliver.
 */
final class SeamSearch {

    private static final int MOST_SEAMS = 20;

    /** A part narrower than this is hard to hold and to join (common practice, no source). */
    static final double SLIVER_MM = 100;

    /** Where no more of a strip than this fits, or no more than its gaps take away, its length is the trouble. */
    private static final double LEAST_MM = 1;

    private static final double STEP_MM = 1e-7;

    private final Seams seams;
    private final List<Stock> stocks;

    SeamSearch(Seams seams, List<Stock> stocks) {
        this.seams = seams;
        this.stocks = stocks;
    }

    /** The parts; nothing if seams in this direction do not help. */
    Optional<List<CutPiece>> parts() {
        List<Double> heights = new ArrayList<>();
        double from = Double.NEGATIVE_INFINITY;
        while (!fits(from, Double.POSITIVE_INFINITY)) {
            double to = highest(from);
            boolean nothing =
                    to - Math.max(from, 0) < LEAST_MM || seams.between(from, to).isEmpty();
            if (nothing || heights.size() == MOST_SEAMS) {
                return Optional.empty();
            }
            heights.add(to);
            from = to;
        }
        lowerLast(heights);
        double last = heights.get(heights.size() - 1);
        return seams.between(last, Double.POSITIVE_INFINITY).map(top -> seams.at(heights));
    }

    /** Whether a part fits; one of which nothing is left does. */
    private boolean fits(double from, double to) {
        return seams.between(from, to).map(part -> Fit.of(part, stocks).fits()).orElse(true);
    }

    /** The highest next seam under which the part still fits. */
    private double highest(double from) {
        double low = Math.max(from, 0);
        double high = seams.topMm();
        while (high - low > STEP_MM) {
            double middle = (low + high) / 2;
            if (fits(from, middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** Lowers the last seam until the part above it is no sliver, as far as that part then still fits. */
    private void lowerLast(List<Double> heights) {
        int last = heights.size() - 1;
        double below = last == 0 ? 0 : heights.get(last - 1);
        double lower = Math.max(seams.topMm() - SLIVER_MM, (seams.topMm() + below) / 2);
        if (heights.get(last) > lower && fits(lower, Double.POSITIVE_INFINITY)) {
            heights.set(last, lower);
        }
    }
}
