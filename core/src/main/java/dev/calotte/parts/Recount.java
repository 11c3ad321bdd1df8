package dev.calotte.parts;

import java.util.ArrayList;
import java.util.List;

/**
 * The kinds of a dome with openings: those of the whole dome that still have pieces, under their numbers.
 *
 * @param <K> the kinds
 */
final class Recount<K> {

    /** The kinds that have pieces, in the order of the whole dome's. */
    final List<K> kinds;

    /** The place in that list for each piece. */
    final int[] kindOf;

    /** Makes a kind with another count. */
    interface Counted<K> {
        /**
         * Makes a kind.
         *
         * @param kind the place of the kind in the whole dome's list
         * @param count how many pieces it has now
         */
        K of(int kind, int count);
    }

    /** Takes the kinds as they are counted. */
    Recount(List<K> kinds, int[] kindOf) {
        this.kinds = kinds;
        this.kindOf = kindOf;
    }

    /**
     * Counts anew.
     *
     * @param kindCount how many kinds the whole dome has
     * @param wholeKindOf the place in the whole dome's list for each piece that remains
     * @param counted makes the kinds
     */
    Recount(int kindCount, int[] wholeKindOf, Counted<K> counted) {
        int[] counts = new int[kindCount];
        for (int kind : wholeKindOf) {
            counts[kind]++;
        }
        List<K> found = new ArrayList<>();
        int[] place = new int[kindCount];
        for (int kind = 0; kind < kindCount; kind++) {
            if (counts[kind] > 0) {
                place[kind] = found.size();
                found.add(counted.of(kind, counts[kind]));
            }
        }
        this.kinds = List.copyOf(found);
        this.kindOf = new int[wholeKindOf.length];
        for (int i = 0; i < kindOf.length; i++) {
            kindOf[i] = place[wholeKindOf[i]];
        }
    }
}
