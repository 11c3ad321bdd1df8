package dev.calotte.pattern;

import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.geometry.Polygon;
import dev.calotte.geometry.Triangle;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem.Code;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * The shapes of a pattern. A panel that lies h outside the hub centres is larger: the planes of two neighbours meet
 * {@code h tan((π - dihedral) / 2)} outside the line of the hub centres, measured in either plane, so that each side
 * moves by that (elementary; h on the normal of one plane, half the turn between both).
 */
final class PatternShape {

    /** Less than this part of the radius is rounding. */
    private static final double NOTHING = 1e-9;

    private final Cover cover;
    private final String mark;
    private final List<Side> sides;
    private final ConvexPolygon hubs;
    private final double radiusMm;

    /**
     * A shape.
     *
     * @param mark what to call the pattern where something does not work out
     * @param radiusMm from the centre of the sphere to the hubs
     */
    PatternShape(Cover cover, String mark, List<Side> sides, double radiusMm) {
        this.cover = cover;
        this.mark = mark;
        this.sides = sides;
        this.radiusMm = radiusMm;
        this.hubs = ConvexPolygon.of(new Triangle(
                sides.get(0).lengthMm(), sides.get(1).lengthMm(), sides.get(2).lengthMm()));
    }

    /** The triangle between the hub centres. */
    ConvexPolygon hubs() {
        return hubs;
    }

    ConvexPolygon net() {
        return net(cover.sheeting().planeMm());
    }

    private ConvexPolygon net(double planeMm) {
        try {
            return hubs.offset(sides.stream()
                    .mapToDouble(side -> planeMm * StrictMath.tan(side.bevelRad()))
                    .toArray());
        } catch (IllegalArgumentException nothingLeft) {
            throw usedUp("plane", "its plane", planeMm, "Bring the cover nearer to the hub centres");
        }
    }

    Polygon outline() {
        return outline(cover.sheeting().planeMm());
    }

    /** The outline at the other face. */
    Polygon outer() {
        return outline(cover.sheeting().planeMm() + cover.sheeting().thicknessMm());
    }

    private Polygon outline(double planeMm) {
        ConvexPolygon net = net(planeMm);
        Polygon outline = mitred(net);
        if (cover.allowances().corner() == Corner.MIRRORED) {
            outline = Polygon.of(IntStream.range(0, 3)
                    .mapToObj(corner -> mirrored(net, corner))
                    .flatMap(List::stream)
                    .toList());
        }
        for (int corner = 0; corner < 3; corner++) {
            outline = relieved(outline, net, corner, planeMm);
        }
        return outline;
    }

    private ConvexPolygon mitred(ConvexPolygon net) {
        try {
            return net.offset(sides.stream().mapToDouble(Side::allowanceMm).toArray());
        } catch (IllegalArgumentException nothingLeft) {
            double least = sides.stream().mapToDouble(Side::allowanceMm).min().orElseThrow();
            throw usedUp("edge", "its gap", least, "Make the gap smaller");
        }
    }

    private double allowance(int side) {
        return sides.get(Math.floorMod(side, 3)).allowanceMm();
    }

    /** Each allowance ends on the mirror image of the other side; a gap has nothing to fold. */
    private List<Vector2D> mirrored(ConvexPolygon net, int corner) {
        double before = allowance(corner - 1);
        double after = allowance(corner);
        if (before <= 0 || after <= 0) {
            return List.of(net.mitre(corner, before, after));
        }
        Vector2D in = along(net, corner - 1);
        Vector2D out = along(net, corner);
        Vector2D point = net.corner(corner);
        double cotangent = -in.dotProduct(out) / out.crossProduct(Vector2D.ZERO, in);
        return List.of(
                new Vector2D(1, point, -before * cotangent, in, before, net.outward(Math.floorMod(corner - 1, 3))),
                point,
                new Vector2D(1, point, after * cotangent, out, after, net.outward(corner)));
    }

    private static Vector2D along(ConvexPolygon net, int side) {
        return net.corner(side + 1).subtract(net.corner(side)).normalize();
    }

    /** Cuts a corner off square to its bisector: a blunt one, and round the hub's axis. */
    private Polygon relieved(Polygon outline, ConvexPolygon net, int corner, double planeMm) {
        Vector2D outward = along(net, corner - 1).subtract(along(net, corner)).normalize();
        double limit = Double.POSITIVE_INFINITY;
        double wider = Math.max(allowance(corner - 1), allowance(corner));
        if (cover.allowances().corner() == Corner.BLUNT && wider > 0) {
            limit = net.corner(corner).dotProduct(outward) + wider;
        }
        double relief = cover.allowances().hubReliefMm();
        if (relief > 0) {
            limit = Math.min(limit, axis(corner, planeMm).dotProduct(outward) - relief);
        }
        if (beyond(outline, outward, limit) <= NOTHING * radiusMm) {
            return outline;
        }
        List<Vector2D> left = outline.clipped(outward, limit);
        if (left.size() < 3 || !keepsSides(left, net)) {
            throw usedUp("hub-relief", "its hub relief", relief, "Make the relief smaller");
        }
        return Polygon.of(left);
    }

    /** How far a polygon reaches beyond a line; a cut that only touches a corner would leave a side without length. */
    private static double beyond(Polygon polygon, Vector2D outward, double limit) {
        return polygon.corners().stream()
                        .mapToDouble(corner -> corner.dotProduct(outward))
                        .max()
                        .orElseThrow()
                - limit;
    }

    /** Whether something is left of all three cut edges. */
    private boolean keepsSides(List<Vector2D> left, ConvexPolygon net) {
        for (int side = 0; side < 3; side++) {
            Vector2D outward = net.outward(side);
            double line = net.corner(side).dotProduct(outward) + allowance(side);
            long on = left.stream()
                    .filter(point -> Math.abs(point.dotProduct(outward) - line) < NOTHING * radiusMm)
                    .count();
            if (on < 2) {
                return false;
            }
        }
        return true;
    }

    /**
     * Where the line from the sphere's centre through a hub meets a plane parallel to the panel: all such points lie on
     * lines through the centre, so they are the hub centres drawn out from the foot of the centre on the plane, which
     * is the centre of their circumscribed circle.
     */
    Vector2D axis(int corner, double planeMm) {
        Vector2D foot = circumcentre();
        double toPlane = Math.sqrt(radiusMm * radiusMm - foot.distanceSq(hubs.corner(0)));
        double scale = (toPlane + planeMm) / toPlane;
        return new Vector2D(1 - scale, foot, scale, hubs.corner(corner));
    }

    private Vector2D circumcentre() {
        Vector2D apex = hubs.corner(2);
        double half = hubs.corner(1).getX() / 2;
        double y = (apex.getNormSq() - 2 * half * apex.getX()) / (2 * apex.getY());
        return new Vector2D(half, y);
    }

    private CalotteException usedUp(String key, String what, double mm, String mend) {
        return new CalotteException(
                Code.IMPOSSIBLE,
                cover.where(key),
                String.format(Locale.ROOT, "%s of %.1f mm uses up a side of panel %s.", what, mm, mark),
                mend + ", or take a larger dome or a lower breakdown.");
    }
}
