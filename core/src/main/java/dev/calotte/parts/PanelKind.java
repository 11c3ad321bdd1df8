package dev.calotte.parts;

import dev.calotte.geometry.Triangle;
import java.util.List;
import java.util.Optional;

/**
 * Panels of one shape and hand. Congruent panels may still differ in their bevels: those belong to each panel's edges.
 *
 * @param number from 1, by rising area; mirror twins share it
 * @param hand which of two mirror images it is
 * @param struts the numbers of the strut kinds of its three sides, rising; where struts of one length have unequal ends,
 *     the first kind of that length
 * @param triangle its three sides in millimetres, rising
 * @param twin the mark of the mirror image, if the dome has such panels too
 * @param count how many panels there are
 */
public record PanelKind(
        int number, Hand hand, List<Integer> struts, Triangle triangle, Optional<String> twin, int count) {

    /**
     * Copies the list.
     *
     * @param number from 1
     * @param hand which of two mirror images it is
     * @param struts the strut kinds of its sides
     * @param triangle its sides
     * @param twin the mark of the mirror image
     * @param count how many panels there are
     */
    public PanelKind {
        struts = List.copyOf(struts);
    }

    /**
     * The mark of the kind.
     *
     * @return for example {@code P4L}
     */
    public String mark() {
        return "P" + number + hand.letter();
    }

    /** The same kind of another number of panels, which may have lost its twin. */
    PanelKind counted(int other, Optional<String> theirTwin) {
        return new PanelKind(number, hand, struts, triangle, theirTwin, other);
    }
}
