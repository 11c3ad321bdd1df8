package dev.calotte.nest;

import dev.calotte.threads.Crew;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * A shorter plan on one roll: short blocks that are repeated, chained, and the whole then squeezed together. What was
 * there before is squeezed as well.
 */
final class RollSearch {

    private static final Vector2D RIGHT = new Vector2D(1, 0);
    private static final int MOST_BLOCKS = 160;
    private static final int MOST_PARTS = 6;
    private static final int SQUEEZED = 6;
    private static final int FEW = 24;
    private static final int STARTS = 8;
    private static final int THROWN_PATIENCE = 80;
    private static final double FIRST_SHARE = 0.002;
    private static final int PATIENCE = 6;

    private final Kinds kinds;
    private final Field field;
    private final Layout layout;

    RollSearch(Kinds kinds, Field field, Layout layout) {
        this.kinds = kinds;
        this.field = field;
        this.layout = layout;
    }

    /** The best of what is given and what is found, all on one roll; empty if it is longer than the roll. */
    List<Spot> search(List<List<Spot>> given) {
        List<List<Spot>> plans = new ArrayList<>(given);
        boolean few = kinds.parts() <= FEW;
        plans.addAll(few ? thrown(plans) : chained(blocks()));
        plans.sort(Comparator.comparingDouble(this::end));
        List<Callable<List<Spot>>> work = new ArrayList<>();
        int share = layout.steps() / 4 / SQUEEZED;
        for (List<Spot> plan : plans.subList(0, Math.min(SQUEEZED, plans.size()))) {
            work.add(() -> squeezed(plan, share));
        }
        List<Spot> best = List.of();
        for (List<Spot> plan : new Crew(layout.threads()).all(work)) {
            if (best.isEmpty() || end(plan) < end(best)) {
                best = plan;
            }
        }
        return best.isEmpty() || end(best) > field.length() ? List.of() : best;
    }

    /** Few parts are thrown in anew and squeezed, several times over. */
    private List<List<Spot>> thrown(List<List<Spot>> given) {
        double length = Double.POSITIVE_INFINITY;
        for (List<Spot> plan : given) {
            length = Math.min(length, end(plan));
        }
        double best = length;
        List<Callable<List<Spot>>> work = new ArrayList<>();
        for (int start = 0; start < STARTS && length < Double.POSITIVE_INFINITY; start++) {
            int seed = start;
            work.add(() -> thrown(best, seed, layout.steps() * 3 / 4 / STARTS));
        }
        return new Crew(layout.threads())
                .all(work).stream().filter(plan -> !plan.isEmpty()).toList();
    }

    private List<Spot> thrown(double length, int seed, int budget) {
        int[] kindOf = SheetPattern.kindOf(Arrays.stream(kinds.needed()).boxed().toList());
        Shaking shaking = new Shaking(kinds, kindOf, layout.spacingMm(), seed);
        List<Spot> best = List.of();
        double shortest = length;
        while (shaking.steps() < budget) {
            shaking.within(shortest, field.width(), false).scatter();
            if (shaking.settle(THROWN_PATIENCE)) {
                Squeeze squeeze = new Squeeze(shaking, field.width(), false).from(shaking.spots(), shortest);
                squeeze.run(0.01, THROWN_PATIENCE, budget - shaking.steps());
                best = squeeze.spots();
                shortest = squeeze.length();
            }
        }
        return best;
    }

    private List<Block> blocks() {
        List<List<Integer>> sorts = sorts();
        BlockSearch search = new BlockSearch(kinds, field.width(), layout.spacingMm());
        int parts = 0;
        for (List<Integer> counts : sorts) {
            parts += SheetPattern.kindOf(counts).length;
        }
        List<Callable<Block>> work = new ArrayList<>();
        for (List<Integer> counts : sorts) {
            // larger blocks get more of three quarters of the steps
            int share = (int) (0.75 * layout.steps() * SheetPattern.kindOf(counts).length / parts);
            work.add(() -> search.find(counts, share));
        }
        return new Crew(layout.threads())
                .all(work).stream().filter(Objects::nonNull).toList();
    }

    /** Small numbers of parts, the smallest first, as long as there are not too many. */
    private List<List<Integer>> sorts() {
        List<List<Integer>> all = new ArrayList<>();
        List<List<Integer>> last = List.of(Collections.nCopies(kinds.count(), 0));
        for (int size = 1; size <= MOST_PARTS; size++) {
            List<List<Integer>> next = new ArrayList<>();
            for (List<Integer> counts : last) {
                int from = kinds.count() - 1;
                while (from > 0 && counts.get(from) == 0) {
                    from--;
                }
                for (int kind = from; kind < kinds.count(); kind++) {
                    if (counts.get(kind) < kinds.piece(kind).count()) {
                        next.add(SheetPattern.changed(counts, kind, 1));
                    }
                }
            }
            if (all.size() + next.size() > MOST_BLOCKS) {
                break;
            }
            all.addAll(next);
            last = next;
        }
        return all;
    }

    private List<List<Spot>> chained(List<Block> blocks) {
        int[] need = kinds.needed();
        List<List<Spot>> plans = new ArrayList<>();
        for (BlockMix.Runs runs : new BlockMix(blocks, need, kinds.widest() / 8).best()) {
            plans.add(new Chain(kinds, field.width(), layout.spacingMm()).lay(runs, need));
        }
        return plans;
    }

    private List<Spot> squeezed(List<Spot> plan, int budget) {
        int[] kindOf = plan.stream().mapToInt(Spot::kind).toArray();
        Shaking shaking = new Shaking(kinds, kindOf, layout.spacingMm(), budget);
        Squeeze squeeze = new Squeeze(shaking, field.width(), false).from(plan, end(plan));
        squeeze.run(FIRST_SHARE, PATIENCE, budget);
        return squeeze.spots();
    }

    private double end(List<Spot> plan) {
        return plan.stream()
                .mapToDouble(spot -> kinds.outline(spot).reach(RIGHT))
                .max()
                .orElse(Double.POSITIVE_INFINITY);
    }
}
