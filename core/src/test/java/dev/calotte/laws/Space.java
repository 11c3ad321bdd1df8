package dev.calotte.laws;

import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Hub;
import dev.calotte.dome.Panel;
import dev.calotte.dome.Strut;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** A dome measured anew from the positions of its hubs, in units of the radius. */
record Space(Dome dome, List<Vector3D> points) {

    static Space of(DomeSpec spec) {
        Dome dome = Dome.of(spec);
        return new Space(
                dome,
                dome.hubs().stream()
                        .map(Hub::position)
                        .map(p -> p.scalarMultiply(1 / dome.radiusMm()))
                        .toList());
    }

    Vector3D corner(Panel panel, int k) {
        return points.get(panel.hubs().get(k % 3));
    }

    /** Outwards, as long as twice the panel's area. */
    Vector3D normal(Panel panel) {
        Vector3D from = corner(panel, 0);
        return corner(panel, 1).subtract(from).crossProduct(corner(panel, 2).subtract(from));
    }

    double area(Panel panel) {
        return normal(panel).getNorm() / 2;
    }

    double angle(Panel panel, int k) {
        Vector3D at = corner(panel, k);
        return Vector3D.angle(
                corner(panel, k + 1).subtract(at), corner(panel, k + 2).subtract(at));
    }

    /** A. Van Oosterom and J. Strackee, The Solid Angle of a Plane Triangle, IEEE Trans. Biomed. Eng. 30, 1983, eq. 8. */
    double solidAngle(Panel panel) {
        Vector3D a = corner(panel, 0);
        Vector3D b = corner(panel, 1);
        Vector3D c = corner(panel, 2);
        double below = 1 + a.dotProduct(b) + b.dotProduct(c) + c.dotProduct(a);
        return 2 * StrictMath.atan2(a.dotProduct(b.crossProduct(c)), below);
    }

    /** Of a sphere or a dome seen from its centre, the space under the panels. */
    double volumeFromCentre() {
        return dome.panels().stream()
                        .mapToDouble(p -> normal(p).dotProduct(corner(p, 0)))
                        .sum()
                / 6;
    }

    Vector3D along(Strut strut) {
        return points.get(strut.to()).subtract(points.get(strut.from()));
    }

    /** The third hub of a panel. */
    int opposite(Panel panel, Strut strut) {
        return panel.hubs().stream()
                .filter(h -> h != strut.from() && h != strut.to())
                .findFirst()
                .orElseThrow();
    }

    /** The angle from one panel to another about their strut, through the inside. */
    double dihedral(Strut strut, Panel one, Panel other) {
        Vector3D axis = along(strut).normalize();
        Vector3D middle = points.get(strut.from());
        Vector3D u = across(points.get(opposite(one, strut)).subtract(middle), axis);
        Vector3D v = across(points.get(opposite(other, strut)).subtract(middle), axis);
        Vector3D inwards = across(middle.negate(), axis);
        return Vector3D.angle(u, inwards) + Vector3D.angle(inwards, v);
    }

    private static Vector3D across(Vector3D vector, Vector3D axis) {
        return vector.subtract(axis.scalarMultiply(vector.dotProduct(axis)));
    }
}
