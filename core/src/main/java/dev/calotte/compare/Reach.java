package dev.calotte.compare;

import dev.calotte.sphere.Solid;
import dev.calotte.sphere.Spacing;
import dev.calotte.sphere.Up;
import java.util.List;

/**
 * How far {@link Candidates} looks around the own dome.
 *
 * @param width how many breakdowns of a class and rows to either side, 0 or more
 * @param atMost how many candidates there are at most, the own dome among them, 1 or more
 * @param solids the solids that the others may have
 * @param classes the classes that their breakdowns may have
 * @param spacings their spacings
 * @param ups what may be up
 */
public record Reach(
        int width, int atMost, List<Solid> solids, List<Integer> classes, List<Spacing> spacings, List<Up> ups) {

    /** About a hundred domes of all sorts. */
    public static final Reach USUAL = new Reach(
            1, 100, List.of(Solid.values()), List.of(1, 2, 3), List.of(Spacing.values()), List.of(Up.values()));

    /** The farthest look: beyond it domes have nothing in common with the own. */
    public static final int WIDEST = 8;

    /** The most candidates. */
    public static final int MOST = 2000;

    /**
     * Checks the numbers and copies the lists.
     *
     * @param width how many breakdowns and rows to either side, up to {@link #WIDEST}
     * @param atMost how many candidates at most, up to {@link #MOST}
     * @param solids the solids
     * @param classes the classes
     * @param spacings the spacings
     * @param ups what may be up
     * @throws IllegalArgumentException if a number is out of its bounds
     */
    public Reach {
        if (width < 0 || width > WIDEST || atMost < 1 || atMost > MOST) {
            throw new IllegalArgumentException("no look goes " + width + " far for " + atMost + " domes");
        }
        solids = List.copyOf(solids);
        classes = List.copyOf(classes);
        spacings = List.copyOf(spacings);
        ups = List.copyOf(ups);
    }
}
