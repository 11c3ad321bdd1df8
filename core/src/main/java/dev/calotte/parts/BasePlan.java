package dev.calotte.parts;

import dev.calotte.dome.Dome;
import dev.calotte.dome.Hub;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** The base ring of a dome seen from above: bay number i lies between the hubs number i and i + 1. */
final class BasePlan {

    final int size;

    private final Vector3D[] points;
    private final boolean[] hubStays;
    private final boolean[] bayStays;

    BasePlan(Dome dome) {
        Dome whole = dome.whole();
        List<Integer> ring = whole.baseRing();
        List<Hub> hubs = whole.hubs();
        this.size = ring.size();
        this.points = ring.stream().map(h -> hubs.get(h).position()).toArray(Vector3D[]::new);
        boolean[] hubsLeft = new boolean[hubs.size()];
        IntStream.range(0, dome.hubs().size()).forEach(h -> hubsLeft[dome.wholeHub(h)] = true);
        boolean[] strutsLeft = new boolean[whole.struts().size()];
        IntStream.range(0, dome.struts().size()).forEach(s -> strutsLeft[dome.wholeStrut(s)] = true);
        this.hubStays = new boolean[size];
        this.bayStays = new boolean[size];
        for (int i = 0; i < size; i++) {
            hubStays[i] = hubsLeft[ring.get(i)];
            // a base hub's first strut has all panels on the left: it runs to the next hub of the ring
            bayStays[i] = strutsLeft[whole.around(ring.get(i)).get(0).strut()];
        }
    }

    private Vector3D at(int i) {
        return points[Math.floorMod(i, size)];
    }

    /** The hubs that remain. */
    IntStream hubs() {
        return IntStream.range(0, size).filter(i -> hubStays[i]);
    }

    /** The bays whose base strut remains. */
    IntStream bays() {
        return IntStream.range(0, size).filter(i -> bayStays[i]);
    }

    double lowestMm() {
        return IntStream.range(0, size).mapToDouble(i -> at(i).getZ()).min().orElseThrow();
    }

    /** How much higher a hub stands than the lowest. */
    double aboveLowestMm(int hub) {
        return at(hub).getZ() - lowestMm();
    }

    /** From upright to upright along the ground. */
    double widthMm(int bay) {
        Vector3D way = at(bay + 1).subtract(at(bay));
        return Math.sqrt(way.getX() * way.getX() + way.getY() * way.getY());
    }

    /** The angle inside the ring between the two bays that meet at a hub. */
    double insideRad(int hub) {
        Vector3D next = at(hub + 1).subtract(at(hub));
        Vector3D before = at(hub - 1).subtract(at(hub));
        double sine = next.getX() * before.getY() - next.getY() * before.getX();
        double cosine = next.getX() * before.getX() + next.getY() * before.getY();
        double angle = StrictMath.atan2(sine, cosine);
        return angle < 0 ? angle + 2 * Math.PI : angle;
    }
}
