package dev.calotte.solid;

import dev.calotte.document.Mesh;
import dev.calotte.dome.Dome;
import dev.calotte.dome.Panel;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * The dome's skin at a small scale, open below. Its outside is that of {@link DomeModel}; inside, each hub lies so far
 * in that the wall is at least as thick as asked for at every panel. Hubs move in along the radius, those of the base
 * ring on the level, so that the shell stands on its whole edge. The inner triangles are those of the panels, thus over
 * a panel the distance to its plane is least at a corner.
 */
final class ShellModel {

    private final Dome dome;
    private final double scale;
    private final double wallMm;
    private final double floor;
    private final boolean[] onRing;

    private ShellModel(Dome dome, double scale, double wallMm) {
        this.dome = dome;
        this.scale = scale;
        this.wallMm = wallMm;
        this.floor = dome.hubs().stream()
                .mapToDouble(hub -> hub.position().getZ() / scale)
                .min()
                .orElseThrow();
        this.onRing = new boolean[dome.hubs().size()];
        dome.baseRing().forEach(hub -> onRing[hub] = true);
    }

    static Mesh of(String title, Dome dome, double scale, double wallMm) {
        return new ShellModel(dome.whole(), scale, wallMm).mesh(title);
    }

    private Mesh mesh(String title) {
        Vector3D[] outer = dome.hubs().stream()
                .map(hub -> hub.position().scalarMultiply(1 / scale))
                .toArray(Vector3D[]::new);
        return new ShellSkin(dome, floor, outer, inner(outer)).mesh(title);
    }

    private Vector3D[] inner(Vector3D[] outer) {
        Vector3D[] inwards = new Vector3D[outer.length];
        double[] least = new double[outer.length];
        Arrays.fill(least, Double.POSITIVE_INFINITY);
        for (int hub = 0; hub < outer.length; hub++) {
            Vector3D level = new Vector3D(outer[hub].getX(), outer[hub].getY(), 0);
            inwards[hub] = (onRing[hub] ? level : outer[hub]).normalize().negate();
        }
        for (Panel panel : dome.panels()) {
            Vector3D normal = normal(panel, outer);
            for (int hub : panel.hubs()) {
                least[hub] = Math.min(least[hub], -inwards[hub].dotProduct(normal));
            }
        }
        Vector3D[] inner = new Vector3D[outer.length];
        for (int hub = 0; hub < outer.length; hub++) {
            inner[hub] = outer[hub].add(wallMm / least[hub], inwards[hub]);
        }
        return inner;
    }

    private static Vector3D normal(Panel panel, Vector3D[] at) {
        List<Integer> hubs = panel.hubs();
        Vector3D side = at[hubs.get(1)].subtract(at[hubs.get(0)]);
        Vector3D other = at[hubs.get(2)].subtract(at[hubs.get(0)]);
        return side.crossProduct(other).normalize();
    }
}
