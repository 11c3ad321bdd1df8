package dev.calotte.check;

import dev.calotte.export.Facets;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Looks at the surface of a solid as a file has it: closed, turned outwards, no facet twice, as large as its title says, and
 * under the name of its part. Titles end with the words {@code part=jigs/H1} (in text files the name alone) and
 * {@code size=220x180.5x12}, in millimetres.
 */
public final class SolidCheck {

    private static final int CORNERS = 3;

    /** What sizes are printed in, and what single precision loses at some hundred millimetres. */
    private static final double PRINTED_MM = 6e-4;

    private static final String NUMBER = "([0-9]+(?:\\.[0-9]+)?)";

    private static final Pattern TITLE =
            Pattern.compile("(?:.*part=)?(\\S+) size=" + NUMBER + "x" + NUMBER + "x" + NUMBER + "(?: by=\\S+)?");

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
     * @param name the name of its file without the ending; the name of its part is the end of it, or, where that was too
     *     long for the title, the other way round
     * @param facets its facets
     * @param findings takes what is wrong
     */
    public static void of(String name, Facets facets, Findings findings) {
        SolidCheck check = new SolidCheck(facets);
        check.titled(name, findings);
        check.check("", findings);
    }

    /**
     * Looks a surface through that has no title of its own.
     *
     * @param name what it is called
     * @param facets its facets
     * @param findings takes what is wrong
     */
    public static void closed(String name, Facets facets, Findings findings) {
        new SolidCheck(facets).check(name, findings);
    }

    private void titled(String name, Findings findings) {
        Matcher title = TITLE.matcher(facets.title());
        if (!title.matches()) {
            findings.add(Fault.CHANGED, "", "its title does not tell part and size.");
            return;
        }
        if (!name.endsWith(title.group(1))) {
            findings.add(Fault.DIFFERENT, "", "it holds " + title.group(1) + ", by its title.");
        }
        for (int axis = 0; axis < CORNERS && facets.size() > 0; axis++) {
            double said = Double.parseDouble(title.group(axis + 2));
            double is = extent(axis);
            if (Math.abs(is - said) > PRINTED_MM) {
                findings.add(
                        Fault.SCALED,
                        "",
                        String.format(
                                Locale.ROOT, "it is %.3f mm along %s, not %.3f mm.", is, "xyz".charAt(axis), said));
                return;
            }
        }
    }

    private double extent(int axis) {
        float least = Float.POSITIVE_INFINITY;
        float most = Float.NEGATIVE_INFINITY;
        for (int i = 0; i < CORNERS * facets.size(); i++) {
            float at = facets.at(i / CORNERS, i % CORNERS, axis);
            least = Math.min(least, at);
            most = Math.max(most, at);
        }
        return (double) most - least;
    }

    private void check(String name, Findings findings) {
        if (facets.size() == 0) {
            findings.add(Fault.MISSING, name, "it has no facets.");
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
                    facet(name, twice),
                    "it runs along an edge the same way as another facet: one of them is turned inside out, or doubled.");
        } else if (open >= 0) {
            findings.add(Fault.MISSING, facet(name, open), "an edge of it has no other facet: there is a hole.");
        } else if (volume() <= 0) {
            findings.add(Fault.MIRRORED, name, "all of its surface is turned inwards.");
        }
    }

    private static String facet(String name, int facet) {
        return name + (name.isEmpty() ? "" : " ") + "facet " + (facet + 1);
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
