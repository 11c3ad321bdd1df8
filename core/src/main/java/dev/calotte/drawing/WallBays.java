package dev.calotte.drawing;

import dev.calotte.dome.Dome;
import dev.calotte.dome.Strut;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** The bays of the wall under a base ring, each by its four corners; those that an opening took are left out. */
final class WallBays {

    private WallBays() {}

    static List<List<Vector3D>> of(Dome dome, double riserMm) {
        Dome whole = dome.whole();
        List<Integer> ring = whole.baseRing();
        if (!(riserMm > 0) || ring.isEmpty()) {
            return List.of();
        }
        List<Vector3D> tops =
                ring.stream().map(h -> whole.hubs().get(h).position()).toList();
        double ground = tops.stream().mapToDouble(Vector3D::getZ).min().orElseThrow() - riserMm;
        Set<List<Integer>> standing = standing(dome);
        List<List<Vector3D>> bays = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            int next = (i + 1) % ring.size();
            if (standing.contains(pair(ring.get(i), ring.get(next)))) {
                Vector3D from = tops.get(i);
                Vector3D to = tops.get(next);
                bays.add(List.of(from, to, on(to, ground), on(from, ground)));
            }
        }
        return bays;
    }

    private static Set<List<Integer>> standing(Dome dome) {
        Set<List<Integer>> pairs = new TreeSet<>((a, b) -> {
            int first = a.get(0).compareTo(b.get(0));
            return first != 0 ? first : a.get(1).compareTo(b.get(1));
        });
        for (Strut strut : dome.struts()) {
            pairs.add(pair(dome.wholeHub(strut.from()), dome.wholeHub(strut.to())));
        }
        return pairs;
    }

    private static List<Integer> pair(int one, int other) {
        return List.of(Math.min(one, other), Math.max(one, other));
    }

    private static Vector3D on(Vector3D top, double ground) {
        return new Vector3D(top.getX(), top.getY(), ground);
    }
}
