package dev.calotte.contour;

import dev.calotte.document.Arc;
import dev.calotte.document.Polyline;
import java.util.Optional;

/**
 * Straight sides for the arcs of an outline so that nothing lies outside it: chords where an arc bends outwards, tangents
 * where it bends inwards. A chord over the angle a of a circle of radius r lies r (1 - cos(a/2)) from it at most, the
 * corners of tangents r (1/cos(a/2) - 1).
 */
public final class Inward {

    /** Corners that are no further apart are one. */
    private static final double SAME_MM = 1e-6;

    private final double toleranceMm;
    private final Corners corners = new Corners();
    private double lastX = Double.NaN;
    private double lastY = Double.NaN;

    private Inward(double toleranceMm) {
        this.toleranceMm = toleranceMm;
    }

    /**
     * Makes an outline straight.
     *
     * @param outline a closed path, in either direction
     * @param toleranceMm how far the straight sides may lie inside the arcs, above 0
     * @return the outline, counter-clockwise and without arcs
     */
    public static Polyline flattened(Polyline outline, double toleranceMm) {
        Polyline forwards = counterClockwise(outline);
        Inward inward = new Inward(toleranceMm);
        for (int c = 0; c < forwards.size(); c++) {
            inward.add(forwards.x(c), forwards.y(c));
            Optional<Arc> arc = forwards.arc(c);
            arc.ifPresent(inward::add);
        }
        return inward.corners.closed(outline.operation());
    }

    /**
     * Makes an outline run counter-clockwise.
     *
     * @param outline a closed path, in either direction
     * @return the same, with its arcs
     */
    public static Polyline counterClockwise(Polyline outline) {
        return sweep(outline) < 0 ? reversed(outline) : outline;
    }

    private void add(double x, double y) {
        if (!(Math.abs(x - lastX) + Math.abs(y - lastY) <= SAME_MM)) {
            corners.add(x, y, 0);
            lastX = x;
            lastY = y;
        }
    }

    private void add(Arc arc) {
        boolean outwards = arc.sweepRad() > 0;
        double r = arc.radiusMm();
        double half = StrictMath.acos(outwards ? Math.max(0, 1 - toleranceMm / r) : r / (r + toleranceMm));
        int parts = (int) Math.ceil(Math.abs(arc.sweepRad()) / (2 * half));
        double step = arc.sweepRad() / parts;
        double out = outwards ? r : r / StrictMath.cos(step / 2);
        for (int part = 0; part < parts; part++) {
            double angle = arc.startRad() + step * (outwards ? part : part + 0.5);
            add(arc.xMm() + out * StrictMath.cos(angle), arc.yMm() + out * StrictMath.sin(angle));
        }
    }

    /** Twice the area, with its sign, of what is inside: of the corners, and of the segments between arcs and chords. */
    private static double sweep(Polyline outline) {
        double twice = 0;
        for (int c = 0; c < outline.size(); c++) {
            int d = (c + 1) % outline.size();
            twice += (outline.x(c) - outline.x(0)) * (outline.y(d) - outline.y(0))
                    - (outline.x(d) - outline.x(0)) * (outline.y(c) - outline.y(0));
            Optional<Arc> arc = outline.arc(c);
            if (arc.isPresent()) {
                double angle = arc.get().sweepRad();
                double r = arc.get().radiusMm();
                twice += r * r * (angle - StrictMath.sin(angle));
            }
        }
        return twice;
    }

    private static Polyline reversed(Polyline outline) {
        int size = outline.size();
        double[] xy = new double[2 * size];
        double[] bulges = new double[size];
        for (int c = 0; c < size; c++) {
            int from = size - 1 - c;
            xy[2 * c] = outline.x(from);
            xy[2 * c + 1] = outline.y(from);
            bulges[c] = -outline.bulge(Math.floorMod(from - 1, size));
        }
        return Polyline.closed(outline.operation(), xy, bulges);
    }
}
