package dev.calotte.pattern;

import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.geometry.Polygon;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * One piece of material: a whole pattern, or a part of one between seams. In the frame of its pattern.
 *
 * @param mark the pattern's mark; of a part with {@code s} and its number from side 0 upwards
 * @param net the finished shape
 * @param outline what is cut at the inner face
 * @param outer what is cut at the outer face, where edges are bevelled
 * @param holes its holes
 * @param seams the lengths of the seams that join it to other parts of its pattern, in millimetres; a part between two
 *     seams has the lower first
 * @param grainRad the direction from x that lies along the stock, if it matters
 */
public record CutPiece(
        String mark,
        ConvexPolygon net,
        Polygon outline,
        Optional<Polygon> outer,
        List<Hole> holes,
        List<Double> seams,
        OptionalDouble grainRad) {

    /**
     * Copies the lists.
     *
     * @param mark its mark
     * @param net the finished shape
     * @param outline what is cut
     * @param outer what is cut at the outer face
     * @param holes its holes
     * @param seams the lengths of its seams
     * @param grainRad the direction along the stock
     */
    public CutPiece {
        holes = List.copyOf(holes);
        seams = List.copyOf(seams);
    }

    /**
     * What the material must have room for.
     *
     * @return the smallest convex shape round the outline, and round the outer one where edges are bevelled
     */
    public ConvexPolygon blank() {
        return ConvexPolygon.round(Stream.concat(Stream.of(outline), outer.stream())
                .flatMap(polygon -> polygon.corners().stream())
                .toList());
    }
}
