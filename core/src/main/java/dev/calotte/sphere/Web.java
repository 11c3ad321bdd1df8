package dev.calotte.sphere;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Struts and panels of a divided solid gathered by its symmetry. Each orbit is known by one strut or panel of it, a
 * panel's corners counter-clockwise seen from outside.
 */
final class Web {

    /**
     * A strut that stands for its orbit.
     *
     * @param from a vertex
     * @param to another
     */
    record Strut(int from, int to) {}

    /**
     * A panel that stands for its orbit.
     *
     * @param corners three vertices
     * @param struts the orbits of its sides, of which the first joins the first two corners
     */
    record Panel(List<Integer> corners, List<Integer> struts) {}

    private final VertexOrbits orbits;
    private final long many;
    private final Map<Long, Integer> strutOrbit = new TreeMap<>();
    private final List<Strut> struts = new ArrayList<>();
    private final List<Panel> panels = new ArrayList<>();

    Web(VertexOrbits orbits, Sites sites) {
        this.orbits = orbits;
        this.many = sites.count();
        Set<Long> found = new TreeSet<>();
        int[] pattern = sites.lattice().triangles();
        for (int t = 0; t < pattern.length; t += 6) {
            int p = sites.number(0, pattern[t], pattern[t + 1]);
            int q = sites.number(0, pattern[t + 2], pattern[t + 3]);
            int r = sites.number(0, pattern[t + 4], pattern[t + 5]);
            if (found.add(key(p, q, r))) {
                panels.add(new Panel(List.of(p, q, r), List.of(strut(p, q), strut(q, r), strut(r, p))));
            }
        }
    }

    private int strut(int from, int to) {
        return strutOrbit.computeIfAbsent(key(from, to), key -> {
            struts.add(new Strut(from, to));
            return struts.size() - 1;
        });
    }

    /** The same for all images of some vertices, in whatever order. */
    private long key(int... vertices) {
        long least = Long.MAX_VALUE;
        int[] image = new int[vertices.length];
        for (int g = 0; g < orbits.motionCount(); g++) {
            for (int k = 0; k < image.length; k++) {
                image[k] = orbits.image(g, vertices[k]);
            }
            Arrays.sort(image);
            long key = 0;
            for (int v : image) {
                key = key * many + v;
            }
            least = Math.min(least, key);
        }
        return least;
    }

    VertexOrbits orbits() {
        return orbits;
    }

    List<Strut> struts() {
        return struts;
    }

    List<Panel> panels() {
        return panels;
    }
}
