package dev.calotte.nest;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.concurrent.Callable;

/**
 * All patterns of a sheet that the area does not exclude, grown part by part: a pattern is looked at only when all that
 * it contains fit, and is left out when one of them cannot. What does not fit at once is looked at again in later rounds,
 * each four times as long.
 */
final class PatternSearch {

    /** More patterns of one size than this are not looked at. */
    private static final int MANY = 1500;

    private static final int FIRST_LOOK = 40;

    private final Kinds kinds;
    private final PatternTrial trial;
    private final double capacity;
    private final double spacing;
    private final int threads;
    private final TreeMap<String, SheetPattern> known = new TreeMap<>();
    private final List<List<SheetPattern>> levels = new ArrayList<>();
    private boolean complete = true;
    private int steps;
    private int round;

    PatternSearch(Kinds kinds, Field field, double capacity, Layout layout) {
        this.kinds = kinds;
        this.trial = new PatternTrial(kinds, field, layout.spacingMm());
        this.capacity = capacity;
        this.spacing = layout.spacingMm();
        this.threads = layout.threads();
    }

    /** Looks at all patterns once more; returns how many descents that took. */
    int look() {
        steps = 0;
        levels.clear();
        List<List<Integer>> candidates = singles();
        while (!candidates.isEmpty() && candidates.size() <= MANY) {
            List<SheetPattern> level = tried(candidates);
            levels.add(level);
            candidates = grown(level);
        }
        complete = candidates.isEmpty();
        round++;
        return steps;
    }

    private List<List<Integer>> singles() {
        List<List<Integer>> singles = new ArrayList<>();
        List<Integer> none = new ArrayList<>();
        for (int kind = 0; kind < kinds.count(); kind++) {
            none.add(0);
        }
        for (int kind = 0; kind < kinds.count(); kind++) {
            singles.add(SheetPattern.changed(none, kind, 1));
        }
        return singles;
    }

    private List<SheetPattern> tried(List<List<Integer>> candidates) {
        List<Callable<PatternTrial.Outcome>> work = new ArrayList<>();
        for (List<Integer> counts : candidates) {
            work.add(() -> outcome(counts));
        }
        List<SheetPattern> level = new ArrayList<>();
        for (PatternTrial.Outcome outcome : Parallel.all(threads, work)) {
            steps += outcome.steps();
            level.add(outcome.pattern());
        }
        level.forEach(pattern -> known.put(key(pattern.counts()), pattern));
        level.removeIf(SheetPattern::cannot);
        return level;
    }

    private PatternTrial.Outcome outcome(List<Integer> counts) {
        SheetPattern before = known.get(key(counts));
        int budget = FIRST_LOOK << (2 * round);
        if (before != null && !shakes(before)) {
            return new PatternTrial.Outcome(before, 0);
        }
        if (!allPartsFit(counts)) {
            return new PatternTrial.Outcome(SheetPattern.open(counts), 0);
        }
        return before == null ? trial.look(counts, budget) : trial.shake(counts, budget, round);
    }

    /** Whether another look may change the verdict: what keeps its grain was decided or given up. */
    private boolean shakes(SheetPattern pattern) {
        boolean free = false;
        for (int kind = 0; kind < kinds.count(); kind++) {
            free |= pattern.counts().get(kind) > 0 && kinds.isFree(kind);
        }
        return !pattern.fits() && !pattern.cannot() && (free || round == 0);
    }

    private boolean allPartsFit(List<Integer> counts) {
        for (int kind = 0; kind < counts.size(); kind++) {
            boolean alone = counts.stream().mapToInt(Integer::intValue).sum() == 1;
            if (counts.get(kind) > 0
                    && !alone
                    && !known.get(key(SheetPattern.changed(counts, kind, -1))).fits()) {
                return false;
            }
        }
        return true;
    }

    /** Patterns of one part more, each once: nothing is added before the last kind that is there. */
    private List<List<Integer>> grown(List<SheetPattern> level) {
        List<List<Integer>> grown = new ArrayList<>();
        for (SheetPattern pattern : level) {
            int last = kinds.count() - 1;
            while (pattern.counts().get(last) == 0) {
                last--;
            }
            for (int kind = last; kind < kinds.count(); kind++) {
                List<Integer> counts = SheetPattern.changed(pattern.counts(), kind, 1);
                if (mayFit(counts) && grown.size() <= MANY) {
                    grown.add(counts);
                }
            }
        }
        return grown;
    }

    private boolean mayFit(List<Integer> counts) {
        double covered = 0;
        for (int kind = 0; kind < counts.size(); kind++) {
            covered += counts.get(kind) * kinds.coveredMm2(kind, spacing);
            if (counts.get(kind) > kinds.piece(kind).count()) {
                return false;
            }
            if (counts.get(kind) > 0) {
                SheetPattern part = known.get(key(SheetPattern.changed(counts, kind, -1)));
                if (part == null || part.cannot()) {
                    return false;
                }
            }
        }
        return covered <= capacity;
    }

    private static String key(List<Integer> counts) {
        return counts.toString();
    }

    /** All patterns that fit or may fit. */
    List<SheetPattern> patterns() {
        return levels.stream().flatMap(List::stream).toList();
    }

    /** Whether no other pattern can fit. */
    boolean complete() {
        return complete;
    }
}
