package dev.calotte.nest;

import java.util.List;

/** Whether the parts of a pattern fit on a sheet: tried part by part, then decided exactly or looked for. */
final class PatternTrial {

    /** How many linear programmes one pattern may take; most are decided in some dozens. */
    private static final int NODES = 20_000;

    private static final int PATIENCE = 15;

    private final Kinds kinds;
    private final Field field;
    private final double spacing;

    PatternTrial(Kinds kinds, Field field, double spacing) {
        this.kinds = kinds;
        this.field = field;
        this.spacing = spacing;
    }

    /** The first look. */
    Outcome look(List<Integer> counts, int steps) {
        int[] kindOf = SheetPattern.kindOf(counts);
        for (Manner manner : new Manner[] {Manner.ALONG, Manner.ANY}) {
            Filling filling = new Filling(kinds, field, new Manners(spacing, manner));
            if (fill(filling, counts)) {
                return fits(counts, filling.spots(), 1);
            }
        }
        for (int kind : kindOf) {
            if (kinds.isFree(kind)) {
                return shake(counts, steps, 0);
            }
        }
        EdgeBranching branching = new EdgeBranching(kinds, kindOf, field, spacing);
        EdgeBranching.Verdict verdict = branching.decide(NODES);
        return verdict == EdgeBranching.Verdict.FITS
                ? fits(counts, branching.spots(), 1)
                : new Outcome(new SheetPattern(counts, verdict, List.of()), 1);
    }

    /** The parts of a filling stand in the order in which they were added, so they are given back by kind. */
    private boolean fill(Filling filling, List<Integer> counts) {
        for (int kind : FirstFit.bySize(kinds)) {
            for (int n = 0; n < counts.get(kind); n++) {
                if (!filling.add(kind)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Another look, with other luck. */
    Outcome shake(List<Integer> counts, int steps, int round) {
        Shaking shaking = new Shaking(kinds, SheetPattern.kindOf(counts), spacing, counts.hashCode() * 31L + round)
                .within(field.length(), field.width(), false);
        return shaking.fits(steps, PATIENCE)
                ? fits(counts, shaking.spots(), shaking.steps())
                : new Outcome(SheetPattern.open(counts), shaking.steps());
    }

    private static Outcome fits(List<Integer> counts, List<Spot> spots, int steps) {
        return new Outcome(new SheetPattern(counts, EdgeBranching.Verdict.FITS, spots), steps);
    }

    /** What was found, and how many descents it took. */
    record Outcome(SheetPattern pattern, int steps) {}
}
