package dev.calotte.cli.brief;

import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Gathers problems while reading goes on, and gives them out in the order of the text. */
final class Problems {

    /** After all places that a text can have. */
    private static final Place END = new Place(Integer.MAX_VALUE, Integer.MAX_VALUE);

    private final List<Found> found = new ArrayList<>();

    private record Found(Place place, Problem problem) {}

    /** Notes a problem; without a place it comes after all others. */
    void add(Optional<Place> place, String where, Refusal refusal) {
        found.add(new Found(place.orElse(END), new Problem(refusal.code(), where, refusal.what(), refusal.mend())));
    }

    /** Notes a problem that no path of keys leads to. */
    void add(Place place, Refusal refusal) {
        add(Optional.of(place), place.where(), refusal);
    }

    Problems copy() {
        Problems copy = new Problems();
        copy.found.addAll(found);
        return copy;
    }

    boolean isEmpty() {
        return found.isEmpty();
    }

    /** Throws everything that was noted, if there is anything. */
    void throwIfAny() {
        if (!isEmpty()) {
            throw thrown();
        }
    }

    /** An exception with everything that was noted. */
    CalotteException thrown() {
        return new CalotteException(found.stream()
                .sorted(Comparator.comparing(Found::place))
                .map(Found::problem)
                .toList());
    }
}
