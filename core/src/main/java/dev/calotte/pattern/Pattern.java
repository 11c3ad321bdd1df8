package dev.calotte.pattern;

import dev.calotte.geometry.Polygon;
import dev.calotte.parts.PanelKind;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A flat shape to cut, the same for all its pieces. Millimetres, seen from outside the dome. The first hub centre is
 * the origin, side 0, the longest of the panel, runs along x, and the sides follow counter-clockwise.
 *
 * @param mark the mark of the panel kind, with a point and a number where panels of a kind differ in their patterns
 * @param kind the panel kind
 * @param count how many pieces there are
 * @param mirror the mark of the pattern that is its mirror image, if there is one; its own if it is symmetric
 * @param sides its three sides
 * @param whole its shapes, cut in one piece
 */
public record Pattern(
        String mark, PanelKind kind, int count, Optional<String> mirror, List<Side> sides, CutPiece whole) {

    /**
     * Copies the list.
     *
     * @param mark the mark
     * @param kind the panel kind
     * @param count how many pieces there are
     * @param mirror the mark of its mirror image
     * @param sides its sides
     * @param whole its shapes
     */
    public Pattern {
        sides = List.copyOf(sides);
    }

    /**
     * The altitudes of the finished shape.
     *
     * @return over side 0, 1 and 2, in millimetres
     */
    public List<Double> netAltitudesMm() {
        return altitudes(whole.net());
    }

    /**
     * The altitudes of what is cut: how wide it is square to each side.
     *
     * @return over side 0, 1 and 2, in millimetres
     */
    public List<Double> cutAltitudesMm() {
        return altitudes(whole.blank());
    }

    private List<Double> altitudes(Polygon polygon) {
        return IntStream.range(0, 3)
                .mapToObj(side -> polygon.extent(whole.net().outward(side)))
                .toList();
    }
}
