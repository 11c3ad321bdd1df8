package dev.calotte.drawing;

import dev.calotte.dome.Dome;
import dev.calotte.dome.Panel;
import dev.calotte.dome.Strut;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * A dome seen along its axis and spread out flat, so that panels that lean outwards or stand upright show as well: each
 * hub at its true bearing, as far from the middle as it is over the sphere (the azimuthal equidistant projection). The
 * start ray is at twelve o'clock. What hangs far below the middle is seen from below instead, and counts clockwise.
 */
final class Spread {

    /** Beyond this angle from the crown rings are drawn more than two and a half times too long. */
    private static final double FURTHEST_RAD = StrictMath.toRadians(125);

    private static final double LEVEL = 1e-9;

    /** Which panels are seen, and from where. */
    enum Side {
        /** All, from above. */
        ALL,
        /** Those whose middle is not below the centre of the sphere, from above. */
        UPPER,
        /** Those whose middle is below it, from below. */
        LOWER
    }

    private final Dome dome;
    private final Side side;
    private final List<Vector3D> points;
    private final List<Vector2D> hubs;
    private final List<Panel> panels;

    private Spread(Dome dome, Side side) {
        this.dome = dome;
        this.side = side;
        this.points = dome.hubs().stream().map(hub -> hub.position()).toList();
        this.hubs = points.stream().map(this::at).toList();
        this.panels = dome.panels().stream().filter(this::shows).toList();
    }

    /** One view that shows every panel, or two. */
    static List<Spread> of(Dome dome) {
        Spread all = new Spread(dome, Side.ALL);
        boolean fits = all.points.stream().allMatch(point -> all.fromPole(point) <= FURTHEST_RAD)
                && all.panels.stream().allMatch(all::facesUp);
        return fits
                ? List.of(all)
                : Stream.of(Side.UPPER, Side.LOWER)
                        .map(side -> new Spread(dome, side))
                        .filter(spread -> !spread.panels.isEmpty())
                        .toList();
    }

    private boolean facesUp(Panel panel) {
        List<Vector2D> at = corners(panel);
        return MarkSpot.cross(at.get(0), at.get(1), at.get(2)) > LEVEL * dome.radiusMm() * dome.radiusMm();
    }

    private boolean shows(Panel panel) {
        return shows(dome, panel);
    }

    /** Whether a panel is on the side that is seen; of this dome or of the one without openings. */
    boolean shows(Dome of, Panel panel) {
        return shows(panel.hubs().stream()
                .mapToDouble(h -> of.hubs().get(h).position().getZ())
                .sum());
    }

    boolean shows(Strut strut) {
        return shows(points.get(strut.from()).getZ() + points.get(strut.to()).getZ());
    }

    private boolean shows(double heights) {
        boolean upper = heights >= -LEVEL * dome.radiusMm();
        return side == Side.ALL || upper == (side == Side.UPPER);
    }

    Dome dome() {
        return dome;
    }

    Side side() {
        return side;
    }

    /** The panels that it shows. */
    List<Panel> panels() {
        return panels;
    }

    /** How far the furthest corner of some panels is from the middle. */
    double reachMm(List<Panel> some) {
        return some.stream()
                .flatMap(panel -> corners(panel).stream())
                .mapToDouble(Vector2D::getNorm)
                .max()
                .orElseThrow();
    }

    List<Vector2D> corners(Panel panel) {
        return panel.hubs().stream().map(hubs::get).toList();
    }

    /** Where a hub lies, in millimetres from the middle. */
    Vector2D hub(int index) {
        return hubs.get(index);
    }

    /** Where a point over the sphere lies, in millimetres from the middle. */
    Vector2D at(Vector3D point) {
        double level = level(point);
        if (level < LEVEL * dome.radiusMm()) {
            return Vector2D.ZERO;
        }
        double out = dome.radiusMm() * fromPole(point) / level;
        return new Vector2D(side == Side.LOWER ? out * point.getY() : -out * point.getY(), out * point.getX());
    }

    private double fromPole(Vector3D point) {
        return StrictMath.atan2(level(point), side == Side.LOWER ? -point.getZ() : point.getZ());
    }

    private static double level(Vector3D point) {
        return Math.sqrt(point.getX() * point.getX() + point.getY() * point.getY());
    }
}
