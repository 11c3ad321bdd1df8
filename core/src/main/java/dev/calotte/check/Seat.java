package dev.calotte.check;

import dev.calotte.geometry.ConvexPolygon;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * Where the finished shape of a panel belongs: in a plane parallel to its hubs, between the lines in which that plane
 * meets those of its neighbours.
 */
final class Seat {

    private final Vector3D[] hubs;
    private final Vector3D out;
    private final double planeMm;
    private final double[] growth = new double[3];

    private Seat(Vector3D[] hubs, Vector3D out, double planeMm) {
        this.hubs = hubs;
        this.out = out;
        this.planeMm = planeMm;
    }

    static Seat of(RecordedDome dome, int index, Edges edges, double planeMm) {
        List<Integer> vertices = dome.panels().get(index).vertices();
        Vector3D[] hubs = vertices.stream().map(dome::vertex).toArray(Vector3D[]::new);
        Seat seat =
                new Seat(hubs, PanelCheck.normal(dome, dome.panels().get(index)).normalize(), planeMm);
        for (int k = 0; k < 3; k++) {
            List<Integer> at = edges.panels(vertices.get(k), vertices.get((k + 1) % 3));
            if (at.size() == 2) {
                int other = at.get(0) == index ? at.get(1) : at.get(0);
                Vector3D normal =
                        PanelCheck.normal(dome, dome.panels().get(other)).normalize();
                seat.growth[k] = seat.growth(k, normal);
            }
        }
        return seat;
    }

    /** The plane of the neighbour, as far out as this one, cuts this one's where both distances from the edge are alike. */
    private double growth(int side, Vector3D normal) {
        Vector3D along = hubs[(side + 1) % 3].subtract(hubs[side]).normalize();
        Vector3D aside = along.crossProduct(out);
        // the tangent of half the angle between the planes, in the form that is exact where they are nearly one
        return planeMm * aside.dotProduct(normal) / (1 + out.dotProduct(normal));
    }

    /** How far the corners of a shape, its first at the hub of that number, are from where they belong. */
    double off(Ring net, int turn) {
        double most = 0;
        for (int k = 0; k < 3; k++) {
            most = Math.max(most, net.corner(k).distance(belongs(turn).corner(k)));
        }
        return most;
    }

    /** The shape that belongs here, in the frame of one whose first corner is at the hub of that number. */
    private Ring belongs(int turn) {
        Vector3D from = hubs[turn];
        Vector3D x = hubs[(turn + 1) % 3].subtract(from).normalize();
        Vector3D y = out.crossProduct(x);
        double[] xy = new double[6];
        double[] grown = new double[3];
        for (int k = 0; k < 3; k++) {
            Vector3D hub = hubs[(turn + k) % 3].subtract(from);
            xy[2 * k] = hub.dotProduct(x);
            xy[2 * k + 1] = hub.dotProduct(y);
            grown[k] = planeMm == 0 ? 0 : growth[(turn + k) % 3];
        }
        ConvexPolygon triangle = ConvexPolygon.of(xy);
        List<Vector2D> corners = new ArrayList<>();
        for (int k = 0; k < 3; k++) {
            corners.add(triangle.mitre(k, grown[(k + 2) % 3], grown[k]));
        }
        return new Ring(corners);
    }

    /** The corners of a shape in space, in the order of the panel's hubs. */
    Vector3D[] corners(Ring net, int turn) {
        Vector3D x = hubs[(turn + 1) % 3].subtract(hubs[turn]).normalize();
        Vector3D y = out.crossProduct(x);
        Vector3D[] corners = new Vector3D[3];
        for (int k = 0; k < 3; k++) {
            Vector2D corner = net.corner(k);
            corners[(turn + k) % 3] = new Vector3D(1, hubs[turn], corner.getX(), x, corner.getY(), y).add(planeMm, out);
        }
        return corners;
    }
}
