package dev.calotte.check;

import dev.calotte.export.Facets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** Compares a body with the same body in another file, facet by facet, in whatever order. */
public final class BodyMatch {

    /** What six decimals and single precision differ in at some hundred millimetres. */
    private static final double WITHIN_MM = 1e-4;

    private static final double CELL_MM = 2e-3;

    /** What is larger or smaller by less is not called scaled, but different. */
    private static final double SAME_SCALE = 1e-4;

    private final Facets body;
    private final Facets solid;

    private BodyMatch(Facets body, Facets solid) {
        this.body = body;
        this.solid = solid;
    }

    /**
     * Compares two bodies.
     *
     * @param name what the body is called
     * @param body its facets
     * @param file the file that holds the other
     * @param solid the facets there
     * @param findings takes what is wrong
     */
    public static void of(String name, Facets body, String file, Facets solid, Findings findings) {
        new BodyMatch(body, solid).check(name, file, findings);
    }

    private void check(String name, String file, Findings findings) {
        double scale = extent(body) / extent(solid);
        if (Math.abs(scale - 1) > SAME_SCALE && scale < Double.POSITIVE_INFINITY && isScaled(scale)) {
            findings.add(Fault.SCALED, name, "it is " + Findings.text(scale) + " times as large as in " + file + ".");
            return;
        }
        Cells there = new Cells(middles(solid), CELL_MM);
        int foreign = unmatched(there, 1);
        int missing = there.left();
        if (foreign + missing > 0) {
            findings.add(
                    Fault.DIFFERENT,
                    name,
                    String.format(
                            Locale.ROOT,
                            "of its %d facets %d are not in %s, and %d of those are not here, the first near %s.",
                            body.size(),
                            foreign,
                            file,
                            missing,
                            missing > 0 ? at(solid, there.firstLeft()) : "its other facets"));
        }
    }

    private static String at(Facets facets, int facet) {
        Vector3D at = middle(facets, facet);
        return String.format(Locale.ROOT, "x %.2f, y %.2f, z %.2f mm", at.getX(), at.getY(), at.getZ());
    }

    /** Whether it is the other body when it is made so many times smaller. */
    private boolean isScaled(double scale) {
        return body.size() == solid.size() && unmatched(new Cells(middles(solid), CELL_MM), 1 / scale) == 0;
    }

    private int unmatched(Cells there, double scale) {
        double within = WITHIN_MM * Math.max(1, scale);
        int unmatched = 0;
        for (int facet = 0; facet < body.size(); facet++) {
            int mine = facet;
            Vector3D at = middle(body, facet).scalarMultiply(scale);
            unmatched += there.take(at, within, other -> same(mine, scale, other, within)) ? 0 : 1;
        }
        return unmatched;
    }

    private boolean same(int facet, double scale, int other, double within) {
        boolean same = false;
        for (int turn = 0; turn < 3 && !same; turn++) {
            same = true;
            for (int i = 0; i < 9 && same; i++) {
                double mine = scale * body.at(facet, (i / 3 + turn) % 3, i % 3);
                same = Math.abs(mine - solid.at(other, i / 3, i % 3)) <= within;
            }
        }
        return same;
    }

    private static List<Vector3D> middles(Facets facets) {
        List<Vector3D> middles = new ArrayList<>();
        for (int facet = 0; facet < facets.size(); facet++) {
            middles.add(middle(facets, facet));
        }
        return middles;
    }

    private static Vector3D middle(Facets facets, int facet) {
        return Slants.corner(facets, facet, 0)
                .add(Slants.corner(facets, facet, 1))
                .add(Slants.corner(facets, facet, 2))
                .scalarMultiply(1.0 / 3);
    }

    /** The longest way along x, y or z. */
    private static double extent(Facets facets) {
        double longest = 0;
        for (int axis = 0; axis < 3; axis++) {
            double least = Double.POSITIVE_INFINITY;
            double most = Double.NEGATIVE_INFINITY;
            for (int i = 0; i < 3 * facets.size(); i++) {
                least = Math.min(least, facets.at(i / 3, i % 3, axis));
                most = Math.max(most, facets.at(i / 3, i % 3, axis));
            }
            longest = Math.max(longest, most - least);
        }
        return longest;
    }
}
