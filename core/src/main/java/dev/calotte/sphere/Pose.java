package dev.calotte.sphere;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * Where the representatives of all orbits are, with the logarithms of the struts' lengths and of the panels' narrowest
 * widths that follow.
 */
final class Pose {

    /** The logarithm of the part of its longest side that a panel's narrowest width should be at least: a tenth. */
    static final double THIN = StrictMath.log(0.1);

    /** The part below which a panel is next to flat. */
    private static final double FLAT = 0.01;

    private final Web web;
    private final Vector3D[] points;
    private final double[] lengths;
    private final double[] logs;

    Pose(Web web, Vector3D[] points) {
        this.web = web;
        this.points = points;
        this.lengths = web.struts().stream().mapToDouble(this::length).toArray();
        this.logs = Arrays.stream(lengths).map(StrictMath::log).toArray();
    }

    /** The pose in which a placed mesh has its representatives. */
    static Pose of(Web web, double[] xyz) {
        Vector3D[] points = new Vector3D[web.orbits().count()];
        for (int o = 0; o < points.length; o++) {
            int i = 3 * web.orbits().representative(o);
            points[o] = web.orbits().freedom(o).settle(new Vector3D(xyz[i], xyz[i + 1], xyz[i + 2]));
        }
        return new Pose(web, points);
    }

    private double length(Web.Strut strut) {
        return point(strut.from()).distance(point(strut.to()));
    }

    private Vector3D point(int vertex) {
        return web.orbits().motion(vertex).apply(points[web.orbits().of(vertex)]);
    }

    Web web() {
        return web;
    }

    Vector3D[] points() {
        return points;
    }

    double length(int strut) {
        return lengths[strut];
    }

    /** The logarithm of a strut's length. */
    double log(int strut) {
        return logs[strut];
    }

    /** The logarithm of the shortest strut's length. */
    double shortest() {
        return Arrays.stream(logs).min().orElseThrow();
    }

    /** The logarithm of the strut ratio. */
    double span() {
        return Arrays.stream(logs).max().orElseThrow() - shortest();
    }

    /** The logarithm of the widest panel's narrowest width. */
    double widest() {
        double widest = 0;
        for (Web.Panel panel : web.panels()) {
            widest = Math.max(widest, width(panel).narrowest());
        }
        return StrictMath.log(widest);
    }

    /** The logarithm of the least part of its longest side that a panel's narrowest width is. */
    double thinnest() {
        double thinnest = 1;
        for (Web.Panel panel : web.panels()) {
            Width width = width(panel);
            thinnest = Math.min(thinnest, width.narrowest() / width.longest());
        }
        return StrictMath.log(thinnest);
    }

    /** How many numbers say where all representatives move. */
    int dimension() {
        int dimension = 0;
        for (int o = 0; o < points.length; o++) {
            dimension += web.orbits().freedom(o).dimension();
        }
        return dimension;
    }

    /** The pose after a step: for each orbit as many numbers as it has directions. */
    Pose moved(double[] step) {
        Vector3D[] moved = new Vector3D[points.length];
        int next = 0;
        for (int o = 0; o < points.length; o++) {
            Freedom freedom = web.orbits().freedom(o);
            moved[o] = points[o];
            for (int k = 0; k < freedom.dimension(); k++) {
                moved[o] = moved[o].add(step[next++], freedom.direction(k, points[o]));
            }
            moved[o] = freedom.dimension() == 0 ? points[o] : freedom.settle(moved[o]);
        }
        return new Pose(web, moved);
    }

    /** How the logarithm of each strut's length begins to change with each number of a step: [strut][number]. */
    double[][] slopes() {
        double[][] slopes = new double[lengths.length][dimension()];
        int[] first = new int[points.length];
        for (int o = 1; o < points.length; o++) {
            first[o] = first[o - 1] + web.orbits().freedom(o - 1).dimension();
        }
        for (int s = 0; s < lengths.length; s++) {
            Web.Strut strut = web.struts().get(s);
            Vector3D pull = point(strut.from()).subtract(point(strut.to()));
            Vector3D slope = pull.scalarMultiply(1 / pull.getNormSq());
            add(slopes[s], first, strut.from(), slope);
            add(slopes[s], first, strut.to(), slope.negate());
        }
        return slopes;
    }

    private void add(double[] slopes, int[] first, int vertex, Vector3D slope) {
        int o = web.orbits().of(vertex);
        Vector3D own = web.orbits().motion(vertex).undo(slope);
        Freedom freedom = web.orbits().freedom(o);
        for (int k = 0; k < freedom.dimension(); k++) {
            slopes[first[o] + k] += own.dotProduct(freedom.direction(k, points[o]));
        }
    }

    /** Whether no panel is turned over or next to flat. */
    boolean wellFormed() {
        for (Web.Panel panel : web.panels()) {
            List<Integer> c = panel.corners();
            Vector3D p = point(c.get(0));
            Vector3D q = point(c.get(1));
            Vector3D r = point(c.get(2));
            Width width = width(panel);
            // three unit vectors span about the panel's double area
            if (p.crossProduct(q).dotProduct(r) <= 0 || width.narrowest() < FLAT * width.longest()) {
                return false;
            }
        }
        return true;
    }

    Width width(Web.Panel panel) {
        List<Integer> s = panel.struts();
        return new Width(lengths[s.get(0)], lengths[s.get(1)], lengths[s.get(2)]);
    }
}
