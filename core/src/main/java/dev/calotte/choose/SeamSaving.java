package dev.calotte.choose;

import dev.calotte.nest.Layout;
import dev.calotte.nest.Measure;
import java.util.Optional;

/**
 * A cover whose panels are divided by a seam also where that uses less stock, and what that brings. Panels that fit in one
 * piece are tried with one seam: at half of their height, where both parts are as large, at a third and at two thirds, and
 * where one, two or three of the lower or of the upper parts are as wide as the stock; all panels alike first, then each
 * kind alone, then kinds beside the best of these. The trials are compared by a first plan, the best of them and the cover
 * with the fewest seams by a plan on which work is spent.
 *
 * <pre>{@code
 * Optional<CoverPlan> least = SeamSaving.of(fit, Layout.quick(5)).map(SeamSaving::plan);
 * }</pre>
 *
 * @param plan the plan with seams where they save stock; the plan with the fewest seams where none of those tried saves
 *     a hundredth of it
 * @param measure in what the saving is told: pieces or length where there is one sort of stock, else price or area
 * @param saved how much less the plan spends than that with the fewest seams, 0 if it is that one
 * @param seamMm how much longer all seams are for it, in millimetres
 */
public record SeamSaving(CoverPlan plan, Measure measure, double saved, double seamMm) {

    /**
     * Looks for seams that save stock.
     *
     * @param fewest the cover with seams only where panels would not fit otherwise
     * @param layout how far pieces stay apart, and how long better plans are looked for
     * @return what came of it; nothing if the cover has no stock or a piece does not fit it
     * @throws dev.calotte.problem.CalotteException if there is too little of the stock
     */
    public static Optional<SeamSaving> of(CoverFit fewest, Layout layout) {
        return CoverPlan.of(fewest, layout).map(plan -> new SavingSearch(plan, layout).best());
    }
}
