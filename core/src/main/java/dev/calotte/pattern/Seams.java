package dev.calotte.pattern;

import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.geometry.Polygon;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * Divides a pattern by seams parallel to its side 0: the side over which it is narrowest, so that the parts are strips
 * across its narrowest stand. Along a seam the part above has the wider allowance of the cover, the one below the
 * narrower.
 *
 * @param cover the cover that the pattern belongs to
 * @param pattern what is divided
 */
public record Seams(Cover cover, Pattern pattern) {

    /** Less than this is nothing that could be cut. */
    private static final double LEAST_MM2 = 1;

    private static final Vector2D UP = new Vector2D(0, 1);
    private static final Vector2D DOWN = new Vector2D(0, -1);

    /**
     * Where the pattern ends.
     *
     * @return the height of the finished shape's apex over the hub centres of side 0, in millimetres
     */
    public double topMm() {
        return pattern.whole().net().reach(UP);
    }

    /**
     * The parts between seams.
     *
     * @param heightsMm how far each seam lies above the hub centres of side 0, rising, inside the finished shape
     * @return the parts from side 0 upwards, one more than seams
     * @throws IllegalArgumentException if nothing is left of a part
     */
    public List<CutPiece> at(List<Double> heightsMm) {
        double[] borders = DoubleStream.concat(
                        DoubleStream.of(Double.NEGATIVE_INFINITY),
                        DoubleStream.concat(
                                heightsMm.stream().mapToDouble(h -> h), DoubleStream.of(Double.POSITIVE_INFINITY)))
                .toArray();
        return IntStream.range(0, borders.length - 1)
                .mapToObj(i -> part(i + 1, borders[i], borders[i + 1]))
                .toList();
    }

    private CutPiece part(int number, double from, double to) {
        CutPiece bare = between(from, to).orElseThrow(() -> new IllegalArgumentException("no part is left there"));
        String mark = pattern.mark() + "s" + number;
        return new CutPiece(
                mark,
                bare.net(),
                bare.outline(),
                bare.outer(),
                cover.fasteners().isPresent()
                        ? HoleRows.of(cover, mark, bare.outline().hull(), bare.net())
                        : List.of(),
                bare.seams(),
                bare.grainRad());
    }

    /**
     * What lies between two seams, without its holes.
     *
     * @param fromMm the height of the lower seam, or minus infinity for the lowest part
     * @param toMm the height of the upper seam, or infinity for the uppermost part
     * @return the part, with the mark of the whole; nothing if gaps leave nothing of it
     */
    public Optional<CutPiece> between(double fromMm, double toMm) {
        CutPiece whole = pattern.whole();
        double below = fromMm - cover.allowances().wideMm();
        double above = toMm + cover.allowances().narrowMm();
        Optional<Polygon> net = between(whole.net(), fromMm, toMm);
        Optional<Polygon> outline = between(whole.outline(), below, above);
        return net.flatMap(n -> outline.map(o -> new CutPiece(
                whole.mark(),
                ConvexPolygon.of(n.corners()),
                o,
                whole.outer().flatMap(outer -> between(outer, below, above)),
                List.of(),
                DoubleStream.of(fromMm, toMm)
                        .filter(Double::isFinite)
                        .mapToObj(this::lengthMm)
                        .toList(),
                whole.grainRad())));
    }

    private static Optional<Polygon> between(Polygon polygon, double from, double to) {
        Optional<Polygon> above = Double.isFinite(from) ? polygon(polygon.clipped(DOWN, -from)) : Optional.of(polygon);
        return Double.isFinite(to) ? above.flatMap(p -> polygon(p.clipped(UP, to))) : above;
    }

    private static Optional<Polygon> polygon(List<Vector2D> corners) {
        double area = 0;
        for (int i = 1; i < corners.size() - 1; i++) {
            Vector2D first = corners.get(0);
            area += corners.get(i + 1).crossProduct(first, corners.get(i));
        }
        return Math.abs(area) > LEAST_MM2 ? Optional.of(Polygon.of(corners)) : Optional.empty();
    }

    /**
     * How long a seam is.
     *
     * @param heightMm how far it lies above the hub centres of side 0
     * @return its length on the finished shape, in millimetres
     */
    public double lengthMm(double heightMm) {
        ConvexPolygon net = pattern.whole().net();
        return net.extent(new Vector2D(1, 0)) * (topMm() - heightMm) / net.extent(UP);
    }
}
