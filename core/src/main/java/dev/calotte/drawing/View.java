package dev.calotte.drawing;

import dev.calotte.dome.Dome;
import dev.calotte.dome.Panel;
import dev.calotte.dome.Strut;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/** A dome as it is seen from one side: where each hub is on paper, and in which order panels are painted. */
final class View {

    private final Camera camera;
    private final List<Vector3D> points;
    private final List<Panel> order;

    View(Dome dome, Camera camera) {
        this.camera = camera;
        this.points = dome.hubs().stream().map(hub -> hub.position()).toList();
        List<Panel> panels = List.copyOf(dome.panels());
        this.order = PaintOrder.of(panels.stream().map(this::seen).toList()).stream()
                .map(panels::get)
                .toList();
    }

    private double[] seen(Panel panel) {
        double[] xyz = new double[9];
        for (int k = 0; k < 3; k++) {
            Vector3D point = points.get(panel.hubs().get(k));
            xyz[3 * k] = camera.across(point);
            xyz[3 * k + 1] = camera.upwards(point);
            xyz[3 * k + 2] = camera.towards(point);
        }
        return xyz;
    }

    /** The panels that show some area to the eye or would if nothing stood before them, the furthest first. */
    List<Panel> panels() {
        return order;
    }

    /** Whether the outside of a panel is turned to the eye. */
    boolean showsOutside(Panel panel) {
        List<Vector2D> at = corners(panel);
        return MarkSpot.cross(at.get(0), at.get(1), at.get(2)) > 0;
    }

    /** Whether a strut is on the side of the dome that is turned to the eye. */
    boolean isNear(Strut strut) {
        return camera.towards(points.get(strut.from()).add(points.get(strut.to()))) > 0;
    }

    List<Vector2D> corners(Panel panel) {
        return panel.hubs().stream().map(this::hub).toList();
    }

    Vector2D hub(int index) {
        return at(points.get(index));
    }

    Vector2D at(Vector3D point) {
        return new Vector2D(camera.across(point), camera.upwards(point));
    }

    /** How near the eye a point is. */
    double towards(Vector3D point) {
        return camera.towards(point);
    }

    /** What the hubs cover, in millimetres of the dome. */
    Box extent() {
        double[] x = points.stream().mapToDouble(camera::across).sorted().toArray();
        double[] y = points.stream().mapToDouble(camera::upwards).sorted().toArray();
        return new Box(x[0], y[0], x[x.length - 1], y[y.length - 1]);
    }
}
