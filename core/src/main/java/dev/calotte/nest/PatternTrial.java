package dev.calotte.nest;

import java.util.List;

/** Whether the parts of a pattern fit on a sheet: tried part by part, then decided exactly or looked for. */
final class PatternTrial {

    /** How many linear programmes one pattern may take; most are decided in some dozens. */
    private static final int NODES = 50_000;

    /** So many linear programmes take as long as a step. */
    private static final int NODES_A_STEP = 50;

    /** The programmes of more than four parts take longer: as the cube of their number. */
    private static final int FEW_CUBED = 64;

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
        int filled = 0;
        for (Manner manner : new Manner[] {Manner.ALONG, Manner.ANY}) {
            Filling filling = new Filling(kinds, field, new Manners(spacing, manner));
            boolean fits = fill(filling, counts);
            filled += filling.steps();
            if (fits) {
                return fits(counts, filling.spots(), 1 + filled);
            }
        }
        Outcome outcome = again(counts, steps, 0);
        return new Outcome(outcome.pattern(), outcome.steps() + filled);
    }

    private Outcome decide(List<Integer> counts, int nodes) {
        EdgeBranching branching = new EdgeBranching(kinds, SheetPattern.kindOf(counts), field, spacing);
        int many = counts.stream().mapToInt(Integer::intValue).sum();
        int weight = Math.max(1, many * many * many / FEW_CUBED);
        EdgeBranching.Verdict verdict = branching.decide(nodes / weight);
        int steps = 1 + branching.nodes() * weight / NODES_A_STEP;
        return verdict == EdgeBranching.Verdict.FITS
                ? fits(counts, branching.spots(), steps)
                : new Outcome(new SheetPattern(counts, verdict, List.of()), steps);
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

    /** Another look, with other luck, or more of it. */
    Outcome again(List<Integer> counts, int steps, int round) {
        return isFree(counts) ? shake(counts, steps, round) : decide(counts, Math.min(NODES, NODES_A_STEP * steps));
    }

    private boolean isFree(List<Integer> counts) {
        for (int kind = 0; kind < counts.size(); kind++) {
            if (counts.get(kind) > 0 && kinds.isFree(kind)) {
                return true;
            }
        }
        return false;
    }

    private Outcome shake(List<Integer> counts, int steps, int round) {
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
