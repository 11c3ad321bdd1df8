package dev.calotte.compare;

import java.util.List;
import java.util.Optional;

/**
 * The domes that could stand in the place of another, ranked.
 *
 * <p>All are computed but for how their pieces lie on sheets and rolls, which takes longest: that is done for the
 * leaders alone. Bars of frames with many kinds of struts are estimated as well, but for the own dome. What the others take is estimated: as if their pieces lay as close as those of the first dome in the
 * order of candidates that fits, the own one if it does. Leaders are that one, then those that the estimates leave
 * unbeaten, then the first by the column; as many as the {@link Effort} says, fewer if they have very many pieces.
 *
 * <pre>{@code
 * Cladding cladding = new Cladding(cover, stocks, 5);
 * Request request = new Request(spec, joinery, List.of(), List.of(cladding), new InCommon.OfSize(spec.size()));
 * List<Candidate> nearest = Candidates.of(dome, Reach.USUAL).subList(0, 5);
 * Comparison compared = Comparison.of(request, nearest, Optional.empty(), new Effort(1, 0, 2), () -> {});
 * }</pre>
 *
 * @param rows those that can be built, sorted
 * @param ruledOut those that cannot, in the order of candidates
 * @param sortedBy what the rows are sorted by; what does not fit comes last
 * @param criteria what the best are best in, see {@link Compared#best()}
 */
public record Comparison(List<Compared> rows, List<RuledOut> ruledOut, Column sortedBy, List<Column> criteria) {

    /**
     * Copies the lists.
     *
     * @param rows those that can be built
     * @param ruledOut those that cannot
     * @param sortedBy what the rows are sorted by
     * @param criteria what the best are best in
     */
    public Comparison {
        rows = List.copyOf(rows);
        ruledOut = List.copyOf(ruledOut);
        criteria = List.copyOf(criteria);
    }

    /**
     * Compares domes.
     *
     * @param request what they have in common
     * @param candidates the domes, the own one among them
     * @param sortedBy what to sort by; if absent {@link Column#PER_ROOM}, without stock and prices the bars or the kinds
     * @param effort how much work may be spent
     * @param done told after each dome and each plan, from whatever thread worked on it
     * @return the comparison, the same for any number of threads
     */
    public static Comparison of(
            Request request, List<Candidate> candidates, Optional<Column> sortedBy, Effort effort, Runnable done) {
        return new Bench(request, candidates, sortedBy, effort, done).compare();
    }
}
