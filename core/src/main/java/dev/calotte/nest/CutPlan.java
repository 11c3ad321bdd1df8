package dev.calotte.nest;

import java.util.List;

/**
 * Sheets and lengths of roll with all parts on them, and the least that is known to be needed.
 *
 * @param sheets what is used, in the order of the stock
 * @param goal what is spent, and what must be
 */
public record CutPlan(List<CutSheet> sheets, Goal goal) {

    /**
     * Copies the list.
     *
     * @param sheets what is used
     * @param goal what is spent, and what must be
     */
    public CutPlan {
        sheets = List.copyOf(sheets);
    }

    /**
     * How much of what is used becomes parts.
     *
     * @return from 0 to 1
     */
    public double utilisation() {
        double used = sheets.stream().mapToDouble(CutSheet::areaMm2).sum();
        return sheets.stream().mapToDouble(CutSheet::partsMm2).sum() / used;
    }
}
