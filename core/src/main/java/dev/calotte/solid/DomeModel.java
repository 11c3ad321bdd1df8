package dev.calotte.solid;

import dev.calotte.document.Mesh;
import dev.calotte.dome.Dome;
import dev.calotte.dome.Hub;
import dev.calotte.dome.Panel;
import dev.calotte.geometry.EarClipping;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The dome as a solid body at a small scale: its panels, a flat floor at the level of the lowest hub, and where base
 * hubs stand higher a vertical wall down to that level. Openings are not cut out, so that the body stays closed.
 *
 * <pre>{@code
 * Mesh model = DomeModel.of("Shelter", dome, 50);
 * }</pre>
 */
public final class DomeModel {

    private final Dome dome;
    private final double scale;
    private final List<Integer> ring;
    private final double floor;
    /** The vertex under each hub of the ring: the hub itself if it stands on the floor. */
    private final int[] foot;

    private double[] xyz;
    private int[] triangles;
    private int vertices;
    private int corners;

    private DomeModel(Dome dome, double scale) {
        this.dome = dome;
        this.scale = scale;
        this.ring = dome.baseRing();
        this.floor =
                dome.hubs().stream().mapToDouble(h -> h.position().getZ()).min().orElseThrow();
        this.foot = new int[ring.size()];
        this.xyz = new double[3 * (dome.hubs().size() + ring.size())];
        this.triangles = new int[3 * (dome.panels().size() + 3 * ring.size())];
    }

    /**
     * Makes the model.
     *
     * @param title what to call it
     * @param dome the dome; its openings are closed
     * @param scale how many times smaller the model is, above 0: 20 for a scale of 1:20
     * @return the document {@code model}, its least coordinates 0 and its floor at z = 0
     */
    public static Mesh of(String title, Dome dome, double scale) {
        DomeModel model = new DomeModel(dome.whole(), scale);
        model.addPanels();
        if (!model.ring.isEmpty()) {
            model.addWall();
            model.addFloor();
        }
        model.moveToOrigin();
        return new Mesh("model", title, model.xyz, model.triangles);
    }

    private void addPanels() {
        for (Hub hub : dome.hubs()) {
            add(hub.position().getX(), hub.position().getY(), hub.position().getZ());
        }
        for (Panel panel : dome.panels()) {
            add(panel.hubs().get(0), panel.hubs().get(1), panel.hubs().get(2));
        }
    }

    /** Between two ring hubs and their feet: a rectangle, a triangle where one stands on the floor, or nothing. */
    private void addWall() {
        for (int i = 0; i < foot.length; i++) {
            foot[i] = addFoot(dome.hubs().get(ring.get(i)));
        }
        for (int i = 0; i < foot.length; i++) {
            int j = (i + 1) % foot.length;
            int here = ring.get(i);
            int there = ring.get(j);
            if (foot[i] != here) {
                add(here, foot[i], foot[j]);
            }
            if (foot[j] != there) {
                add(here, foot[j], there);
            }
        }
    }

    private int addFoot(Hub hub) {
        boolean stands = hub.position().getZ() - floor <= 1e-9 * dome.radiusMm();
        return stands ? hub.index() : add(hub.position().getX(), hub.position().getY(), floor);
    }

    private void addFloor() {
        double[] x = Arrays.stream(foot).mapToDouble(v -> xyz[3 * v]).toArray();
        double[] y = Arrays.stream(foot).mapToDouble(v -> xyz[3 * v + 1]).toArray();
        int[] flat = EarClipping.triangulate(x, y);
        for (int t = 0; t < flat.length; t += 3) {
            add(foot[flat[t]], foot[flat[t + 2]], foot[flat[t + 1]]);
        }
    }

    private int add(double x, double y, double z) {
        xyz[3 * vertices] = x / scale;
        xyz[3 * vertices + 1] = y / scale;
        xyz[3 * vertices + 2] = z / scale;
        return vertices++;
    }

    private void add(int a, int b, int c) {
        triangles[corners++] = a;
        triangles[corners++] = b;
        triangles[corners++] = c;
    }

    private void moveToOrigin() {
        xyz = Arrays.copyOf(xyz, 3 * vertices);
        triangles = Arrays.copyOf(triangles, corners);
        for (int k = 0; k < 3; k++) {
            int axis = k;
            double least = IntStream.range(0, vertices)
                    .mapToDouble(v -> xyz[3 * v + axis])
                    .min()
                    .orElseThrow();
            for (int v = 0; v < vertices; v++) {
                xyz[3 * v + axis] -= least;
            }
        }
    }
}
