package dev.calotte.nest;

import dev.calotte.stock.Bar;
import java.util.List;

/**
 * One bar and what is cut from it.
 *
 * @param bar the bar
 * @param cuts the cuts in their order along the bar, longest first; the count in each is 1
 */
public record CutBar(Bar bar, List<Cut> cuts) {

    /**
     * Copies the list.
     *
     * @param bar the bar
     * @param cuts the cuts in their order along the bar
     */
    public CutBar {
        cuts = List.copyOf(cuts);
    }

    /**
     * What is left of the usable length when all is cut off, each part with one cut.
     *
     * @return the length of the rest, 0 if the last cut uses it up
     */
    public double leftMm() {
        double used = cuts.stream().mapToDouble(Cut::lengthMm).sum();
        return Math.max(0, bar.usableLengthMm() - used - cuts.size() * bar.kerfMm());
    }
}
