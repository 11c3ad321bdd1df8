package dev.calotte.dome;

import java.util.Arrays;
import java.util.stream.IntStream;

/** Which of a number of things stay, and their numbers among those that do. */
final class Renumbering {

    /** The old number of each thing that stays, rising. */
    final int[] old;

    private final int[] here;

    private Renumbering(int[] same) {
        this.old = same;
        this.here = same;
    }

    Renumbering(boolean[] stays) {
        this.old = IntStream.range(0, stays.length).filter(i -> stays[i]).toArray();
        this.here = new int[stays.length];
        Arrays.fill(here, Spoke.NONE);
        for (int i = 0; i < old.length; i++) {
            here[old[i]] = i;
        }
    }

    static Renumbering all(int count) {
        int[] same = new int[count];
        Arrays.setAll(same, i -> i);
        return new Renumbering(same);
    }

    int count() {
        return old.length;
    }

    boolean stays(int oldNumber) {
        return here[oldNumber] != Spoke.NONE;
    }

    /** The new number of a thing, or {@link Spoke#NONE} if it went. */
    int here(int oldNumber) {
        return here[oldNumber];
    }
}
