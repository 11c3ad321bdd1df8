package dev.calotte.drawing;

import dev.calotte.dome.Dome;
import dev.calotte.dome.Panel;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * One row of panels unrolled: from left to right as it is counted, that is counter-clockwise from the start ray seen from
 * above, and as the eye meets it that goes round the dome with the panels before it. Downwards each hub is as far from
 * the crown as over the sphere; to the right it is so far that the strip has the area of its panels.
 */
final class RowStrip {

    private static final double ON_AXIS = 1e-9;
    private static final double TURN = 2 * Math.PI;

    private final int row;
    private final List<Panel> panels;
    private final List<List<Vector2D>> corners = new ArrayList<>();

    private RowStrip(int row, List<Panel> panels, List<Vector3D> hubs, double radiusMm) {
        this.row = row;
        this.panels = panels;
        double real = 0;
        double flat = 0;
        List<List<Vector2D>> angles = new ArrayList<>();
        for (Panel panel : panels) {
            List<Vector3D> at = panel.hubs().stream().map(hubs::get).toList();
            List<Vector2D> turned = isAroundAxis(at) ? fromPole(at, radiusMm) : angles(at);
            angles.add(turned);
            real += at.get(1)
                    .subtract(at.get(0))
                    .crossProduct(at.get(2).subtract(at.get(0)))
                    .getNorm();
            flat += Math.abs(MarkSpot.cross(turned.get(0), turned.get(1), turned.get(2)));
        }
        double across = real / flat / radiusMm;
        angles.forEach(turned -> corners.add(turned.stream()
                .map(a -> new Vector2D(across * a.getX(), -radiusMm * a.getY()))
                .toList()));
    }

    static List<RowStrip> of(Dome dome) {
        List<Vector3D> hubs = dome.hubs().stream().map(hub -> hub.position()).toList();
        SortedMap<Integer, List<Panel>> rows = new TreeMap<>();
        dome.panels()
                .forEach(panel -> rows.computeIfAbsent(panel.row(), row -> new ArrayList<>())
                        .add(panel));
        List<RowStrip> strips = new ArrayList<>();
        rows.forEach((row, panels) -> {
            panels.sort(Comparator.comparingInt(Panel::place));
            strips.add(new RowStrip(row, panels, hubs, dome.radiusMm()));
        });
        return strips;
    }

    /** Bearing and angle from the crown of each corner; a corner on the axis lies over the middle of the other two. */
    private static List<Vector2D> angles(List<Vector3D> corners) {
        Vector3D sum = corners.get(0).add(corners.get(1)).add(corners.get(2));
        double middle = bearing(sum, 0);
        List<Vector2D> angles = new ArrayList<>();
        for (Vector3D corner : corners) {
            double turned = bearing(corner, middle) - middle;
            double near = turned - TURN * Math.rint(turned / TURN);
            angles.add(new Vector2D(middle + near, StrictMath.atan2(level(corner), corner.getZ())));
        }
        return angles;
    }

    private static boolean isAroundAxis(List<Vector3D> corners) {
        int left = 0;
        for (int k = 0; k < 3; k++) {
            Vector3D a = corners.get(k);
            Vector3D b = corners.get((k + 1) % 3);
            double turn = a.getX() * b.getY() - a.getY() * b.getX();
            left += turn > ON_AXIS * a.getNormSq() ? 1 : turn < -ON_AXIS * a.getNormSq() ? -1 : 0;
        }
        return Math.abs(left) == 3;
    }

    /** A panel across the axis, which has no left and right end, as it is seen from outside with the start ray up. */
    private static List<Vector2D> fromPole(List<Vector3D> corners, double radiusMm) {
        double handed = corners.get(0).getZ() > 0 ? -1 : 1;
        return corners.stream()
                .map(at -> new Vector2D(handed * at.getY() / radiusMm, -at.getX() / radiusMm))
                .toList();
    }

    private static double bearing(Vector3D at, double onAxis) {
        if (level(at) <= ON_AXIS * at.getNorm()) {
            return onAxis;
        }
        double bearing = StrictMath.atan2(at.getY(), at.getX());
        return bearing < -ON_AXIS ? bearing + TURN : bearing;
    }

    private static double level(Vector3D at) {
        return Math.sqrt(at.getX() * at.getX() + at.getY() * at.getY());
    }

    int row() {
        return row;
    }

    List<Panel> panels() {
        return panels;
    }

    /** The corners of a panel by its place in the list, counter-clockwise. */
    List<Vector2D> corners(int panel) {
        return corners.get(panel);
    }

    Box extent() {
        double[] x = corners.stream()
                .flatMap(List::stream)
                .mapToDouble(Vector2D::getX)
                .sorted()
                .toArray();
        double[] y = corners.stream()
                .flatMap(List::stream)
                .mapToDouble(Vector2D::getY)
                .sorted()
                .toArray();
        return new Box(x[0], y[0], x[x.length - 1], y[y.length - 1]);
    }
}
