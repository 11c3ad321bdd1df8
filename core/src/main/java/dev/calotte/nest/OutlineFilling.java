package dev.calotte.nest;

import dev.calotte.threads.Crew;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;

/**
 * Fills one irregular outline with as much as it can of what is still to be cut: in all manners, by falling and by rising
 * size, then in orders left to chance while there are steps. What covers the most of it is kept.
 */
final class OutlineFilling {

    /** Trials made at once; more threads do not make it more. */
    private static final int BATCH = 8;

    /** Walls lie on each other and on all that is near, so that a pair takes so much longer than on a sheet. */
    private static final int CROWDED = 8;

    private final Kinds kinds;
    private final Kinds faceUp;
    private final Field field;
    private final Layout layout;
    private final int[] wanted;
    private List<Spot> best = List.of();
    private double bestMm2;
    private int steps;

    OutlineFilling(Kinds kinds, Field field, Layout layout, int[] wanted) {
        this.kinds = kinds;
        this.faceUp = kinds.areMirrored() ? kinds.faceUp() : kinds;
        this.field = field;
        this.layout = layout;
        this.wanted = wanted.clone();
    }

    /** Which kind comes next of those that may still have room. */
    private interface Choice {
        int of(List<Integer> open);
    }

    private record Tried(List<Spot> spots, int steps) {}

    /** The best that was found; nothing if there is room for none. */
    Filled fill(List<Manner> all) {
        List<Manner> manners = kinds.areGrained() ? List.of(Manner.ANY) : all;
        List<Callable<Tried>> first = new ArrayList<>();
        for (Kinds some : kinds == faceUp ? List.of(kinds) : List.of(kinds, faceUp)) {
            for (Manner manner : manners) {
                first.add(() -> tried(some, manner, open -> open.get(0)));
                first.add(() -> tried(some, manner, open -> open.get(open.size() - 1)));
            }
        }
        keep(first);
        // what has no room in any of these manners has none in another order
        for (long seed = 0; steps < layout.steps() && !best.isEmpty() && best.size() < total(); seed += BATCH) {
            List<Callable<Tried>> work = new ArrayList<>();
            for (long one = seed; one < seed + BATCH; one++) {
                SplittableRandom random = new SplittableRandom(one);
                Kinds some = one % 2 == 0 ? kinds : faceUp;
                Manner manner = manners.get(random.nextInt(manners.size()));
                work.add(() -> tried(some, manner, open -> open.get(random.nextInt(open.size()))));
            }
            keep(work);
        }
        return new Filled(field, best);
    }

    /** How many steps were spent. */
    int steps() {
        return steps;
    }

    private int total() {
        return IntStream.of(wanted).sum();
    }

    private void keep(List<Callable<Tried>> work) {
        for (Tried tried : new Crew(layout.threads()).all(work)) {
            double mm2 = tried.spots().stream()
                    .mapToDouble(spot -> kinds.shape(spot.kind(), false).area())
                    .sum();
            if (mm2 > bestMm2) {
                best = tried.spots();
                bestMm2 = mm2;
            }
            steps += Math.max(1, CROWDED * tried.steps());
        }
    }

    private Tried tried(Kinds some, Manner manner, Choice choice) {
        Filling filling = new Filling(some, field, new Manners(layout.spacingMm(), manner));
        int[] left = wanted.clone();
        List<Integer> open = new ArrayList<>(IntStream.range(0, left.length)
                .filter(kind -> left[kind] > 0)
                .boxed()
                .toList());
        open.sort(Comparator.comparingDouble(kind -> -some.shape(kind, false).area()));
        while (!open.isEmpty()) {
            Integer kind = choice.of(open);
            // a kind without room has none later either
            if (!filling.add(kind) || --left[kind] == 0) {
                open.remove(kind);
            }
        }
        return new Tried(List.copyOf(filling.spots()), filling.steps());
    }
}
