package dev.calotte.check;

import dev.calotte.export.Facets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** The facets of a solid that look up at one slant: how much of them looks which way. */
final class Slants {

    /** Grids of solids turn the narrowest rim by half of that. */
    private static final double SAME = 2e-3;

    private static final double FULL = 2 * Math.PI;

    private final double withinRad;
    private final double[] bearings;
    /** The area of all before each, and of all. */
    private final double[] before;

    private Slants(List<Facing> facings, double withinRad) {
        this.withinRad = withinRad;
        this.bearings = facings.stream().mapToDouble(Facing::bearing).toArray();
        this.before = new double[bearings.length + 1];
        for (int i = 0; i < bearings.length; i++) {
            before[i + 1] = before[i] + facings.get(i).area();
        }
    }

    private record Facing(double bearing, double area) {}

    /** Those of which the normals are so far from upright, above 0. */
    static Slants of(Facets facets, double slantRad) {
        List<Facing> facings = new ArrayList<>();
        for (int facet = 0; facet < facets.size(); facet++) {
            Vector3D normal = normal(facets, facet);
            double length = normal.getNorm();
            double flat = StrictMath.hypot(normal.getX(), normal.getY());
            if (length > 0 && Math.abs(StrictMath.atan2(flat, normal.getZ()) - slantRad) <= SAME) {
                double bearing = StrictMath.atan2(normal.getY(), normal.getX());
                facings.add(new Facing(bearing < 0 ? bearing + FULL : bearing, length / 2));
            }
        }
        facings.sort(Comparator.comparingDouble(Facing::bearing));
        return new Slants(facings, Math.min(1, SAME / StrictMath.sin(slantRad)));
    }

    /** Twice as long as the facet is large. */
    static Vector3D normal(Facets facets, int facet) {
        Vector3D from = corner(facets, facet, 0);
        return corner(facets, facet, 1)
                .subtract(from)
                .crossProduct(corner(facets, facet, 2).subtract(from));
    }

    static Vector3D corner(Facets facets, int facet, int corner) {
        return new Vector3D(facets.at(facet, corner, 0), facets.at(facet, corner, 1), facets.at(facet, corner, 2));
    }

    /** Where some of them look, a few of any that look nearly the same way. */
    List<Double> bearings() {
        List<Double> some = new ArrayList<>();
        double last = Double.NEGATIVE_INFINITY;
        for (double bearing : bearings) {
            if (bearing - last > withinRad / 8) {
                some.add(bearing);
                last = bearing;
            }
        }
        return some;
    }

    /** How much of them looks that way. */
    double areaMm2(double bearing) {
        double least = bearing - withinRad;
        double turned = least - FULL * Math.floor(least / FULL);
        double most = turned + 2 * withinRad;
        return upTo(most) - upTo(turned) + (most > FULL ? upTo(most - FULL) : 0);
    }

    private double upTo(double bearing) {
        int low = 0;
        int high = bearings.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (bearings[middle] < bearing) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return before[low];
    }
}
