package dev.calotte.pattern;

import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem.Code;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * The holes of a pattern: along each of its three sides, as far inside as the edge distance, which every hole keeps to
 * every edge. Where a corner is cut off, and the ends of two rows come nearer than half the pitch, one hole stands for
 * both.
 */
final class HoleRows {

    private final Fasteners fasteners;
    private final List<Vector2D> inside;
    private final ConvexPolygon net;

    private HoleRows(Fasteners fasteners, List<Vector2D> inside, ConvexPolygon net) {
        this.fasteners = fasteners;
        this.inside = inside;
        this.net = net;
    }

    static List<Hole> of(Cover cover, String mark, ConvexPolygon outline, ConvexPolygon net) {
        Fasteners fasteners = cover.fasteners().orElseThrow();
        List<Vector2D> inside = inside(outline, fasteners.edgeDistanceMm());
        if (inside.size() < 3) {
            throw new CalotteException(
                    Code.IMPOSSIBLE,
                    cover.where("fasteners"),
                    String.format(
                            Locale.ROOT,
                            "panel %s has no room for holes %.1f mm from its edges.",
                            mark,
                            fasteners.edgeDistanceMm()),
                    "Bring the holes nearer to the edges.");
        }
        return new HoleRows(fasteners, inside, net).holes();
    }

    private static List<Vector2D> inside(ConvexPolygon outline, double distance) {
        List<Vector2D> left = outline.corners();
        for (int side = 0; side < outline.size() && left.size() >= 3; side++) {
            Vector2D outward = outline.outward(side);
            double limit = outline.corner(side).dotProduct(outward) - distance;
            left = clip(left, outward, limit);
        }
        return left;
    }

    private static List<Vector2D> clip(List<Vector2D> corners, Vector2D outward, double limit) {
        try {
            return ConvexPolygon.round(corners).clipped(outward, limit);
        } catch (IllegalArgumentException nothingLeft) {
            return List.of();
        }
    }

    private List<Hole> holes() {
        List<Vector2D> centres = new ArrayList<>();
        for (int side = 0; side < net.size(); side++) {
            Vector2D before = end(side - 1, false);
            Vector2D start = end(side, true);
            if (isWide(before, start)) {
                centres.add(before);
            }
            centres.add(corner(side, true));
            centres.addAll(row(side));
        }
        return centres.stream()
                .map(c -> new Hole(c.getX(), c.getY(), fasteners.holeMm()))
                .toList();
    }

    private boolean isWide(Vector2D before, Vector2D start) {
        return start.distance(before) >= fasteners.pitchMm() / 2;
    }

    /** The hole with which the row along a side begins or ends. */
    private Vector2D corner(int side, boolean first) {
        Vector2D own = end(side, first);
        Vector2D other = end(first ? side - 1 : side + 1, !first);
        return isWide(own, other) ? own : new Vector2D(0.5, own, 0.5, other);
    }

    /** The holes between both ends of a row: on its line, though the ends may stand beside it. */
    private List<Vector2D> row(int side) {
        Vector2D outward = net.outward(Math.floorMod(side, net.size()));
        Vector2D along = new Vector2D(-outward.getY(), outward.getX());
        Vector2D origin = end(side, true);
        Vector2D first = corner(side, true).subtract(origin);
        Vector2D last = corner(side, false).subtract(origin);
        double from = first.dotProduct(along);
        double length = last.dotProduct(along) - from;
        double beside = Math.max(Math.abs(first.dotProduct(outward)), Math.abs(last.dotProduct(outward)));
        int parts = (int) Math.ceil(length / (fasteners.pitchMm() - beside) - 1e-9);
        List<Vector2D> centres = new ArrayList<>();
        for (int i = 1; i < parts; i++) {
            centres.add(origin.add(from + i * length / parts, along));
        }
        return centres;
    }

    /** The first or the last point of the row along a side, counter-clockwise. */
    private Vector2D end(int side, boolean first) {
        Vector2D outward = net.outward(Math.floorMod(side, net.size()));
        Vector2D along = new Vector2D(-outward.getY(), outward.getX());
        double furthest =
                inside.stream().mapToDouble(p -> p.dotProduct(outward)).max().orElseThrow();
        return inside.stream()
                .filter(p -> furthest - p.dotProduct(outward) < 1e-9 * (1 + Math.abs(furthest)))
                .min(Comparator.comparingDouble(p -> (first ? 1 : -1) * p.dotProduct(along)))
                .orElseThrow();
    }
}
