package dev.calotte.parts;

import java.util.List;
import java.util.Optional;

/**
 * Hubs of one shape and hand. The struts are listed counter-clockwise seen from outside, for a {@link Hand#RIGHT} hub
 * too; a base hub's list begins with the strut that has all its panels on the left.
 *
 * @param number from 1, by rising number of struts, then of their kinds; mirror twins share it. Kinds that openings
 *     made are numbered after those of the whole dome
 * @param hand which of two mirror images it is
 * @param struts the numbers of the strut kinds
 * @param gapsRad the angle from each strut to the next on the plane that touches the sphere; a base hub has one fewer
 *     than struts. At an opening it is the angle to the next strut that remains
 * @param axialAnglesRad the angle of each strut to that plane
 * @param open whether it is a base hub
 * @param twin the mark of the mirror image, if the dome has such hubs too
 * @param count how many hubs there are
 */
public record HubKind(
        int number,
        Hand hand,
        List<Integer> struts,
        List<Double> gapsRad,
        List<Double> axialAnglesRad,
        boolean open,
        Optional<String> twin,
        int count) {

    /**
     * Copies the lists.
     *
     * @param number from 1
     * @param hand which of two mirror images it is
     * @param struts the strut kinds round the hub
     * @param gapsRad the angles between them
     * @param axialAnglesRad their angles to the tangent plane
     * @param open whether it is a base hub
     * @param twin the mark of the mirror image
     * @param count how many hubs there are
     */
    public HubKind {
        struts = List.copyOf(struts);
        gapsRad = List.copyOf(gapsRad);
        axialAnglesRad = List.copyOf(axialAnglesRad);
    }

    /**
     * The mark of the kind.
     *
     * @return for example {@code H2} or {@code H4L}
     */
    public String mark() {
        return "H" + number + hand.letter();
    }

    /**
     * The marks of the strut kinds.
     *
     * @return in the order of {@link #struts()}, for example {@code S1 S2 S2}
     */
    public List<String> strutMarks() {
        return struts.stream().map(number -> "S" + number).toList();
    }
}
