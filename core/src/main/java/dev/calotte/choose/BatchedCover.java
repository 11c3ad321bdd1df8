package dev.calotte.choose;

import dev.calotte.dome.Panel;
import dev.calotte.nest.BatchPlan;
import dev.calotte.nest.CutPlan;
import dev.calotte.nest.CutSheet;
import dev.calotte.nest.Layout;
import dev.calotte.stock.Roll;
import java.util.List;

/**
 * A cover that is cut batch by batch, so that panels that are made into one unit come off the table together, and what
 * that costs. Batches that follow one another may be laid in groups, see {@link BatchPlan}.
 *
 * <pre>{@code
 * List<List<Panel>> patches = AssemblySpec.USUAL.patches(parts).patches().stream().map(Patch::panels).toList();
 * BatchedCover inOrder = BatchedCover.of(plan, patches, Layout.quick(5));
 * }</pre>
 *
 * @param plan how its pieces are laid
 * @param groups how many batches are in each group
 * @param groupOf for each sheet of the plan, for each part on it, the number of its group, from 0
 * @param free how they are laid with the same steps where any order will do
 */
public record BatchedCover(CoverPlan plan, List<Integer> groups, List<List<Integer>> groupOf, CutPlan free) {

    /**
     * Copies the lists.
     *
     * @param plan how its pieces are laid
     * @param groups how many batches are in each group
     * @param groupOf for each part the number of its group
     * @param free how they are laid where any order will do
     */
    public BatchedCover {
        groups = List.copyOf(groups);
        groupOf = groupOf.stream().map(List::copyOf).toList();
    }

    /**
     * Lays the pieces of a cover batch by batch.
     *
     * @param free the cover and a plan of it in any order
     * @param batches all panels of the dome, each in one batch, in the order in which they are wanted
     * @param layout how far pieces stay apart, and how long a better plan is looked for
     * @return how they are laid
     * @throws dev.calotte.problem.CalotteException at {@code covers.cut-by} if what there is of the stock does not hold
     *     them in that order
     */
    public static BatchedCover of(CoverPlan free, List<List<Panel>> batches, Layout layout) {
        AlikePieces alike = new AlikePieces(
                free.fit(), batches.stream().flatMap(List::stream).toList());
        BatchPlan.Order order = new BatchPlan.Order(
                alike.pieces(), alike.counts(batches), free.fit().stocks());
        BatchPlan laid = BatchPlan.of(order, layout, free.plan().goal());
        return new BatchedCover(
                alike.handOutAlong(laid.plan(), laid.groupOf()), laid.groups(), laid.groupOf(), free.plan());
    }

    /**
     * How much more roll this takes than a plan in any order.
     *
     * @return in millimetres; below 0 if it takes less
     */
    public double extraRollMm() {
        return rollMm(plan.plan()) - rollMm(free);
    }

    private static double rollMm(CutPlan plan) {
        return plan.sheets().stream()
                .filter(sheet -> sheet.stock() instanceof Roll)
                .mapToDouble(CutSheet::lengthMm)
                .sum();
    }

    /**
     * How many more sheets this takes than a plan in any order.
     *
     * @return the number; below 0 if it takes fewer
     */
    public int extraSheets() {
        return sheets(plan.plan()) - sheets(free);
    }

    private static int sheets(CutPlan plan) {
        return (int) plan.sheets().stream()
                .filter(sheet -> !(sheet.stock() instanceof Roll))
                .count();
    }
}
