package dev.calotte.nest;

import dev.calotte.threads.Crew;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.Callable;

/**
 * Empties sheets: the parts of the one with the least on it are pushed in among the parts of others, or change places
 * with smaller ones, until none is left or no move succeeds.
 */
final class Emptying {

    private static final int PATIENCE = 25;

    /** Trials made at once; more threads do not make it more. */
    private static final int BATCH = 8;

    private final Kinds kinds;
    private final Charges charges;
    private final Layout layout;
    private final AreaBound area;
    private final List<Filled> plan;
    private int left;
    private int trials;

    /** Moves parts until the steps of the layout, or none, are left. */
    Emptying(Kinds kinds, Charges charges, Layout layout, List<Filled> plan) {
        this.kinds = kinds;
        this.charges = charges;
        this.layout = layout;
        this.area = new AreaBound(kinds, charges, layout.spacingMm());
        this.plan = new ArrayList<>(plan);
        this.left = layout.steps();
    }

    /** The plan without the sheets that could be emptied, or as it was if none could. */
    List<Filled> empty() {
        List<Filled> best = List.copyOf(plan);
        // an endless roll has no room to throw parts into
        boolean moved = plan.stream()
                .noneMatch(filled -> Double.isInfinite(filled.field().length()));
        while (moved && plan.size() > 1 && left > 0) {
            int victim = lightest();
            moved = move(victim);
            if (plan.get(victim).spots().isEmpty()) {
                plan.remove(victim);
                best = List.copyOf(plan);
            }
        }
        return charges.cost(best) <= charges.cost(plan) ? best : List.copyOf(plan);
    }

    private int lightest() {
        int lightest = 0;
        for (int sheet = 1; sheet < plan.size(); sheet++) {
            if (covered(plan.get(sheet)) < covered(plan.get(lightest))) {
                lightest = sheet;
            }
        }
        return lightest;
    }

    private double covered(Filled filled) {
        return filled.spots().stream().mapToDouble(spot -> covered(spot.kind())).sum();
    }

    private double covered(int kind) {
        return kinds.coveredMm2(kind, layout.spacingMm());
    }

    /** Moves one part away, the largest that will go, or makes it a smaller one. */
    private boolean move(int victim) {
        List<Spot> parts = new ArrayList<>(plan.get(victim).spots());
        parts.sort(Comparator.comparingDouble((Spot spot) -> -covered(spot.kind())));
        int before = -1;
        for (Spot part : parts) {
            if (part.kind() != before && left > 0 && (insert(victim, part) || exchange(victim, part))) {
                return true;
            }
            before = part.kind();
        }
        return false;
    }

    private boolean insert(int victim, Spot part) {
        List<Trial> trials = new ArrayList<>();
        for (int sheet = 0; sheet < plan.size(); sheet++) {
            if (sheet != victim) {
                trials.add(new Trial(sheet, null));
            }
        }
        return first(victim, part, trials);
    }

    private boolean exchange(int victim, Spot part) {
        List<Trial> trials = new ArrayList<>();
        for (int sheet = 0; sheet < plan.size(); sheet++) {
            int before = -1;
            for (Spot other : plan.get(sheet).spots()) {
                boolean smaller = covered(other.kind()) < 0.98 * covered(part.kind());
                if (sheet != victim && smaller && other.kind() != before) {
                    trials.add(new Trial(sheet, other));
                }
                before = other.kind();
            }
        }
        // the smallest in exchange is the most that is won
        trials.sort(Comparator.comparingDouble(trial -> covered(trial.back().kind())));
        return first(victim, part, trials);
    }

    /** Makes the first of the trials that succeeds; all of a batch are made, whatever comes of the others. */
    private boolean first(int victim, Spot part, List<Trial> all) {
        all.removeIf(trial -> tooMuch(trial, part));
        for (int from = 0; from < all.size() && left > 0; from += BATCH) {
            List<Callable<Result>> work = new ArrayList<>();
            for (Trial trial : all.subList(from, Math.min(all.size(), from + BATCH))) {
                long seed = trials++;
                int share = 1 + left / BATCH;
                work.add(() -> attempt(victim, part, trial, new Luck(seed, share)));
            }
            List<Result> results = new Crew(layout.threads()).all(work);
            results.forEach(result -> left -= result.steps());
            for (Result result : results) {
                if (result.target() != null) {
                    plan.set(result.sheet(), result.target());
                    plan.set(victim, result.source());
                    return true;
                }
            }
        }
        return false;
    }

    private boolean tooMuch(Trial trial, Spot part) {
        Filled target = plan.get(trial.sheet());
        double back = trial.back() == null ? 0 : covered(trial.back().kind());
        return target.field().isRoll() || covered(target) + covered(part.kind()) - back > area.capacity(target.field());
    }

    private Result attempt(int victim, Spot part, Trial trial, Luck luck) {
        Filled target = plan.get(trial.sheet());
        List<Spot> kept = new ArrayList<>(target.spots());
        kept.remove(trial.back());
        Shaking shaking = shaking(kept, part, target.field(), luck.seed());
        boolean fits = shaking.settle(PATIENCE, luck.steps());
        int steps = shaking.steps();
        List<Spot> rest = new ArrayList<>(plan.get(victim).spots());
        rest.remove(part);
        if (fits && trial.back() != null) {
            Shaking other = shaking(rest, trial.back(), plan.get(victim).field(), luck.seed());
            fits = other.settle(PATIENCE, luck.steps() - steps);
            steps += other.steps();
            rest = other.spots();
        }
        return fits
                ? new Result(
                        trial.sheet(),
                        new Filled(target.field(), shaking.spots()),
                        new Filled(plan.get(victim).field(), rest),
                        steps)
                : new Result(trial.sheet(), null, null, steps);
    }

    private Shaking shaking(List<Spot> kept, Spot added, Field field, long seed) {
        List<Spot> all = new ArrayList<>(kept);
        all.add(added);
        int[] kindOf = all.stream().mapToInt(Spot::kind).toArray();
        Shaking shaking =
                new Shaking(kinds, kindOf, layout.spacingMm(), seed).within(field.length(), field.width(), false);
        shaking.scatter();
        shaking.take(kept);
        return shaking;
    }

    /** A sheet, and what comes back from it. */
    private record Trial(int sheet, Spot back) {}

    /** What chance begins with, and how many steps may be spent. */
    private record Luck(long seed, int steps) {}

    private record Result(int sheet, Filled target, Filled source, int steps) {}
}
