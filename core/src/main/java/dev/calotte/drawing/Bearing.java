package dev.calotte.drawing;

import dev.calotte.dome.Dome;
import dev.calotte.dome.Opening;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** Directions on the ground, counter-clockwise from the start ray seen from above. */
final class Bearing {

    /** An opening nearer to the axis than this part of the radius has no side of its own. */
    private static final double ON_AXIS = 0.01;

    private Bearing() {}

    /** Where the first opening faces; the start ray if there is none, or if it is at the crown. */
    static double ofDoorRad(Dome dome) {
        if (dome.openings().isEmpty()) {
            return 0;
        }
        Opening door = dome.openings().get(0);
        Dome whole = dome.whole();
        Vector3D sum = Vector3D.ZERO;
        for (int panel : door.panels()) {
            for (int hub : whole.panels().get(panel).hubs()) {
                sum = sum.add(whole.hubs().get(hub).position());
            }
        }
        Vector3D middle = sum.scalarMultiply(1.0 / 3 / door.panels().size());
        double off = Math.sqrt(middle.getX() * middle.getX() + middle.getY() * middle.getY());
        double bearing = StrictMath.atan2(middle.getY(), middle.getX());
        return off < ON_AXIS * dome.radiusMm() ? 0 : bearing < 0 ? bearing + 2 * Math.PI : bearing;
    }
}
