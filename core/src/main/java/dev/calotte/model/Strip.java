package dev.calotte.model;

import dev.calotte.geometry.Polygon;
import dev.calotte.parts.StrutKind;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * The strut of one kind, flat in the plane that holds it and the axes of both its hubs: the line between the hubs' points
 * along x, its middle at the origin, outwards up. Its ends are parallel to the axes, its notches square to them.
 *
 * <p>With the axial angle a, a place at the distance r from the left hub's axis, and h outside the plane that touches the
 * sphere there, lies at {@code (-l/2 + r cos a - h sin a, r sin a + h cos a)}; the right end is its mirror image. The
 * strip lies so far outside the line that both prongs beside a notch are equally wide on the average.
 *
 * @param lengthMm from hub to hub, in the model
 * @param axialRad the angle to the plane that touches the sphere
 * @param joint how it hooks into discs
 */
record Strip(double lengthMm, double axialRad, Joint joint) {

    static Strip of(StrutKind kind, double scale, Joint joint) {
        return new Strip(kind.lengthMm() / scale, kind.axialAngleRad(), joint);
    }

    Polygon outline() {
        double half = joint.slotMm() / 2;
        List<Vector2D> left = List.of(
                atEnd(upMm() + joint.stripMm() / 2),
                left(joint.endMm(), half),
                left(joint.floorMm(), half),
                left(joint.floorMm(), -half),
                left(joint.endMm(), -half),
                atEnd(upMm() - joint.stripMm() / 2));
        List<Vector2D> corners = new ArrayList<>(left);
        for (int c = left.size() - 1; c >= 0; c--) {
            corners.add(new Vector2D(-left.get(c).getX(), left.get(c).getY()));
        }
        return Polygon.of(corners);
    }

    /** How far outside the line between the hubs the middle of the strip lies. */
    double upMm() {
        return (joint.endMm() + joint.floorMm()) / 2 * StrictMath.sin(axialRad);
    }

    private Vector2D left(double r, double h) {
        double cos = StrictMath.cos(axialRad);
        double sin = StrictMath.sin(axialRad);
        return new Vector2D(-lengthMm / 2 + r * cos - h * sin, r * sin + h * cos);
    }

    /** The corner of the left end that lies so far up. */
    private Vector2D atEnd(double up) {
        return left(joint.endMm(), (up - joint.endMm() * StrictMath.sin(axialRad)) / StrictMath.cos(axialRad));
    }
}
