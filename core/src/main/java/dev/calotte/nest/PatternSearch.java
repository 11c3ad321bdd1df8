package dev.calotte.nest;

import dev.calotte.threads.Crew;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.concurrent.Callable;

/**
 * All patterns of a sheet that the area does not exclude, grown part by part: a pattern is looked at only when all that
 * it contains fit, and is left out when one of them cannot. What does not fit at once is looked at again in later rounds,
 * each four times as long.
 */
final class PatternSearch {

    /** So many patterns of one size are looked at, if the steps allow: a tenth of them, but not fewer than some. */
    private static final int MANY = 1500;

    private static final int SOME = 150;
    private static final int FIRST_LOOK = 40;
    private static final int SHORT_LOOK = 12;

    private static final double LITTLE = 1e-6;

    private final Kinds kinds;
    private final PatternTrial trial;
    private final double capacity;
    private final double spacing;
    private final int threads;
    private final int many;
    private final int allSteps;
    private final TreeMap<String, SheetPattern> known = new TreeMap<>();
    private final List<List<SheetPattern>> levels = new ArrayList<>();
    private boolean complete = true;
    private int steps;
    private int budget;
    private int round;

    PatternSearch(Kinds kinds, Field field, double capacity, Layout layout) {
        this.kinds = kinds;
        this.trial = new PatternTrial(kinds, field, layout.spacingMm());
        this.capacity = capacity;
        this.spacing = layout.spacingMm();
        this.threads = layout.threads();
        this.allSteps = layout.steps();
        this.many = Math.max(SOME, Math.min(MANY, allSteps / 10));
    }

    /** Looks at all patterns once more, or as far as so many steps go; returns how many it took. */
    int look(int most) {
        budget = most;
        steps = 0;
        levels.clear();
        List<List<Integer>> candidates = singles();
        while (!candidates.isEmpty()) {
            List<SheetPattern> level = tried(candidates);
            levels.add(level);
            candidates = worthiest(grown(level));
        }
        round++;
        return steps;
    }

    /**
     * If there are too many for what may be spent, those that are known and the most promising others: their parts would
     * cost more than a sheet in patterns that are known to fit, and the most for their area.
     */
    private List<List<Integer>> worthiest(List<List<Integer>> candidates) {
        int affordable = Math.max(0, budget - steps) / SHORT_LOOK;
        int most = Math.min(many, affordable);
        if (candidates.size() <= most) {
            return candidates;
        }
        complete = false;
        if (most == 0) {
            return List.of();
        }
        Columns columns = new Columns(kinds.count(), 1);
        patterns().stream().filter(SheetPattern::fits).forEach(pattern -> columns.add(0, pattern.parts(), 1));
        Simplex simplex = new Simplex(columns, kinds.need(), new double[] {kinds.parts()}, new BitSet());
        simplex.minimise();
        double[] prices = simplex.prices();
        List<List<Integer>> before = new ArrayList<>(candidates);
        before.removeIf(counts -> !known.containsKey(key(counts)));
        List<List<Integer>> sorted = new ArrayList<>(candidates);
        sorted.removeIf(counts -> known.containsKey(key(counts)) || worth(counts, prices) < 1 + LITTLE);
        sorted.sort(Comparator.comparingDouble(counts -> -worth(counts, prices) / covered(counts)));
        before.addAll(sorted.subList(0, Math.min(most, sorted.size())));
        return before;
    }

    private double covered(List<Integer> counts) {
        double covered = 0;
        for (int kind = 0; kind < counts.size(); kind++) {
            covered += counts.get(kind) * kinds.coveredMm2(kind, spacing);
        }
        return covered;
    }

    private static double worth(List<Integer> counts, double[] prices) {
        double worth = 0;
        for (int kind = 0; kind < counts.size(); kind++) {
            worth += counts.get(kind) * prices[kind];
        }
        return worth;
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
        int look = Math.max(SHORT_LOOK, Math.min(FIRST_LOOK, allSteps / 4 / candidates.size()))
                << (complete ? 2 * round : 0);
        for (List<Integer> counts : candidates) {
            work.add(() -> outcome(counts, look));
        }
        List<SheetPattern> level = new ArrayList<>();
        for (PatternTrial.Outcome outcome : new Crew(threads).all(work)) {
            steps += outcome.steps();
            level.add(outcome.pattern());
        }
        level.forEach(pattern -> known.put(key(pattern.counts()), pattern));
        level.removeIf(SheetPattern::cannot);
        return level;
    }

    private PatternTrial.Outcome outcome(List<Integer> counts, int budget) {
        SheetPattern before = known.get(key(counts));
        if (before != null && (before.fits() || before.cannot())) {
            return new PatternTrial.Outcome(before, 0);
        }
        if (!allPartsFit(counts)) {
            return new PatternTrial.Outcome(SheetPattern.open(counts), 0);
        }
        return before == null ? trial.look(counts, budget) : trial.again(counts, budget, round);
    }

    private boolean allPartsFit(List<Integer> counts) {
        boolean alone = counts.stream().mapToInt(Integer::intValue).sum() == 1;
        for (int kind = 0; kind < counts.size() && !alone; kind++) {
            SheetPattern part = counts.get(kind) > 0 ? known.get(key(SheetPattern.changed(counts, kind, -1))) : null;
            if (part != null && !part.fits()) {
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
                if ((complete || pattern.fits()) && mayFit(counts)) {
                    grown.add(counts);
                }
            }
        }
        return grown;
    }

    private boolean mayFit(List<Integer> counts) {
        for (int kind = 0; kind < counts.size(); kind++) {
            if (counts.get(kind) > kinds.piece(kind).count()) {
                return false;
            }
            if (counts.get(kind) > 0) {
                SheetPattern part = known.get(key(SheetPattern.changed(counts, kind, -1)));
                // what was left out before is no reason to leave out more
                if (part == null ? complete : part.cannot()) {
                    return false;
                }
            }
        }
        return covered(counts) <= capacity;
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
