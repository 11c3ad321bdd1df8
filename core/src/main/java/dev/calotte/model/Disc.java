package dev.calotte.model;

import dev.calotte.geometry.Polygon;
import dev.calotte.parts.HubKind;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * The disc of one kind of hub, seen from outside: round, with a slot open at the rim for each strut. The hub's axis goes
 * through the origin, and the kind's first strut points along x.
 *
 * @param kind the kind of hub
 * @param joint how struts hook into it
 */
record Disc(HubKind kind, Joint joint) {

    /** How far the chords that stand for the rim may lie inside the circle: below what any cutter holds. */
    private static final double SAGITTA_MM = 0.01;

    /** Where the slots point, counter-clockwise from x. */
    List<Double> slotsRad() {
        List<Double> angles = new ArrayList<>();
        double angle = 0;
        for (int slot = 0; slot < kind.struts().size(); slot++) {
            angles.add(angle);
            angle += slot < kind.gapsRad().size() ? kind.gapsRad().get(slot) : 0;
        }
        return angles;
    }

    /** The angle from each slot to the next, once round. */
    List<Double> gapsRad() {
        return Joint.gapsRad(kind);
    }

    Polygon outline() {
        List<Vector2D> corners = new ArrayList<>();
        double half = joint.slotMm() / 2;
        double mouth = StrictMath.asin(half / joint.rimMm());
        List<Double> slots = slotsRad();
        for (int slot = 0; slot < slots.size(); slot++) {
            double angle = slots.get(slot);
            corners.add(at(angle, joint.floorMm(), -half));
            corners.add(at(angle, joint.floorMm(), half));
            addRim(corners, angle + mouth, gapsRad().get(slot) - 2 * mouth);
        }
        return Polygon.of(corners);
    }

    /** From one slot's left edge to the next one's right edge. */
    private void addRim(List<Vector2D> corners, double from, double turn) {
        double widest = 2 * StrictMath.acos(1 - SAGITTA_MM / joint.rimMm());
        int chords = Math.max(1, (int) Math.ceil(turn / widest));
        for (int chord = 0; chord <= chords; chord++) {
            corners.add(at(from + turn * chord / chords, joint.rimMm(), 0));
        }
    }

    /** A place by its distance along a direction and to the left of it. */
    static Vector2D at(double angle, double out, double left) {
        double cos = StrictMath.cos(angle);
        double sin = StrictMath.sin(angle);
        return new Vector2D(out * cos - left * sin, out * sin + left * cos);
    }
}
