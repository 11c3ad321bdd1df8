package dev.calotte.compare;

import dev.calotte.problem.CalotteException;
import java.util.List;
import java.util.Optional;

/**
 * How far a candidate has come.
 *
 * @param candidate the candidate
 * @param draft the same in its size, if it can be built
 * @param row its figures, once they are known
 * @param out why it cannot be built, if it cannot
 */
record Entry(Candidate candidate, Optional<Draft> draft, Optional<Compared> row, Optional<RuledOut> out) {

    static Entry drafted(Request request, Candidate candidate) {
        try {
            Draft draft = Draft.of(request, candidate);
            return new Entry(candidate, Optional.of(draft), Optional.empty(), Optional.empty());
        } catch (CalotteException e) {
            return ruledOut(candidate, e);
        }
    }

    private static Entry ruledOut(Candidate candidate, CalotteException e) {
        RuledOut out = new RuledOut(candidate, e.problems().get(0));
        return new Entry(candidate, Optional.empty(), Optional.empty(), Optional.of(out));
    }

    boolean fitsStock() {
        return draft.filter(Draft::fitsStock).isPresent();
    }

    /** With its pieces laid. */
    Entry planned(Request request, int steps) {
        try {
            return with(draft.map(of -> Compared.of(request, of, of.laid(request, steps), true)));
        } catch (CalotteException tooLittleStock) {
            return ruledOut(candidate, tooLittleStock);
        }
    }

    /** As if its pieces lay as close as those of another, if they fit at all. */
    Entry estimated(Request request, List<StockUse> other) {
        return with(draft.map(of -> of.fitsStock()
                ? Compared.of(request, of, of.like(other), other.isEmpty())
                : Compared.of(request, of, List.of(), true)));
    }

    private Entry with(Optional<Compared> figures) {
        return new Entry(candidate, draft, figures, out);
    }

    /** How much longer than others its pieces take to lay: about as the square of their number. */
    long work() {
        long pieces = draft.map(Draft::pieces).orElse(0L);
        return pieces * pieces;
    }
}
