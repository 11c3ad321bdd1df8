package dev.calotte.check;

import dev.calotte.export.Facets;
import java.util.Map;
import java.util.TreeMap;

/** Looks at the surface of a solid as a file has it: closed, turned outwards, no facet twice. */
public final class SolidCheck {

    private static final int CORNERS = 3;

    private final Facets facets;
    private final int[] corners;

    private SolidCheck(Facets facets) {
        this.facets = facets;
        this.corners = new int[CORNERS * facets.size()];
        Map<Place, Integer> known = new TreeMap<>();
        for (int i = 0; i < corners.length; i++) {
            int facet = i / CORNERS;
            Place place = new Place(
                    facets.at(facet, i % CORNERS, 0),
                    facets.at(facet, i % CORNERS, 1),
                    facets.at(facet, i % CORNERS, 2));
            corners[i] = known.computeIfAbsent(place, p -> known.size());
        }
    }

    /** A point, told from others by every bit of its coordinates, as files for printers do it. */
    private record Place(float x, float y, float z) implements Comparable<Place> {

        @Override
        public int compareTo(Place other) {
            int byX = Float.compare(x, other.x);
            int byY = byX != 0 ? byX : Float.compare(y, other.y);
            return byY != 0 ? byY : Float.compare(z, other.z);
        }
    }

    /**
     * Looks a surface through.
     *
     * @param facets its facets
     * @param findings takes what is wrong
     */
    public static void of(Facets facets, Findings findings) {
        new SolidCheck(facets).check(findings);
    }

    private void check(Findings findings) {
        if (facets.size() == 0) {
            findings.add(Fault.MISSING, "", "it has no facets.");
            return;
        }
        Map<Long, Integer> ways = new TreeMap<>();
        int twice = -1;
        for (int half = 0; half < corners.length; half++) {
            if (ways.merge(way(half, false), 1, Integer::sum) > 1 && twice < 0) {
                twice = half / CORNERS;
            }
        }
        int open = -1;
        for (int half = 0; half < corners.length && open < 0; half++) {
            open = ways.getOrDefault(way(half, true), 0) == 1 ? -1 : half / CORNERS;
        }
        if (twice >= 0) {
            findings.add(
                    Fault.MIRRORED,
                    "facet " + (twice + 1),
                    "it runs along an edge the same way as another facet: one of them is turned inside out, or doubled.");
        } else if (open >= 0) {
            findings.add(Fault.MISSING, "facet " + (open + 1), "an edge of it has no other facet: there is a hole.");
        } else if (volume() <= 0) {
            findings.add(Fault.MIRRORED, "", "all of its surface is turned inwards.");
        }
    }

    private long way(int half, boolean back) {
        int facet = half / CORNERS * CORNERS;
        long from = corners[half];
        long to = corners[facet + (half + 1 - facet) % CORNERS];
        return back ? to << 32 | from : from << 32 | to;
    }

    /** By the divergence theorem, from the first corner, so that little is lost to rounding. */
    private double volume() {
        double sum = 0;
        for (int f = 0; f < facets.size(); f++) {
            double[] a = from(f, 0);
            double[] b = from(f, 1);
            double[] c = from(f, 2);
            sum += a[0] * (b[1] * c[2] - b[2] * c[1])
                    + a[1] * (b[2] * c[0] - b[0] * c[2])
                    + a[2] * (b[0] * c[1] - b[1] * c[0]);
        }
        return sum / 6;
    }

    private double[] from(int facet, int corner) {
        double[] place = new double[3];
        for (int axis = 0; axis < 3; axis++) {
            place[axis] = (double) facets.at(facet, corner, axis) - facets.at(0, 0, axis);
        }
        return place;
    }
}
