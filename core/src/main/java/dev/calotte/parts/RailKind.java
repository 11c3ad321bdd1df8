package dev.calotte.parts;

import java.util.List;

/**
 * Rails of one shape. Seen from outside the dome, a rail runs counter-clockwise round its panel from its start to its
 * end; its mirror image is another kind, for a rail cannot be turned end for end.
 *
 * @param number from 1, by rising length of the panel's edge
 * @param panel the mark of the panels whose frames it belongs to
 * @param strut the mark of the edge that it stands on
 * @param tiltRad how far its outer face leans in from square to the panel, below 0 on a hollow edge
 * @param arrisesMm the lengths of its four arrises: top outer, which is the panel's edge from node to node, top inner,
 *     bottom outer, bottom inner
 * @param longMm from the furthest point at the one end to the furthest at the other, along the rail
 * @param shortMm the length of the shortest arris
 * @param start how it is cut at its start
 * @param end how it is cut at its end
 * @param count how many rails there are: one for each edge of each panel
 */
public record RailKind(
        int number,
        String panel,
        String strut,
        double tiltRad,
        List<Double> arrisesMm,
        double longMm,
        double shortMm,
        End start,
        End end,
        int count) {

    /**
     * The saw's settings for one end, from a square cut, the rail lying on its outer face.
     *
     * @param bladeTiltRad how far the blade is tilted
     * @param gaugeRad how far the mitre gauge is turned; above 0 the bottom is the shorter
     */
    public record End(double bladeTiltRad, double gaugeRad) {}

    /**
     * Copies the list.
     *
     * @param number from 1
     * @param panel the mark of its panels
     * @param strut the mark of its edge
     * @param tiltRad how far it leans
     * @param arrisesMm the lengths of its arrises
     * @param longMm from furthest point to furthest point
     * @param shortMm its shortest arris
     * @param start the cut at its start
     * @param end the cut at its end
     * @param count how many there are
     */
    public RailKind {
        arrisesMm = List.copyOf(arrisesMm);
    }

    /**
     * The mark of the kind.
     *
     * @return for example {@code R3}
     */
    public String mark() {
        return "R" + number;
    }

    /**
     * The larger of its two blade tilts, which decides on the saw.
     *
     * @return the angle in radians
     */
    public double steepestRad() {
        return Math.max(start.bladeTiltRad, end.bladeTiltRad);
    }
}
