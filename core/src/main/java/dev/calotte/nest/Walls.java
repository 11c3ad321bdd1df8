package dev.calotte.nest;

import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.geometry.Polygon;
import dev.calotte.geometry.Surroundings;
import dev.calotte.stock.Outline;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.apache.commons.math3.util.FastMath;

/**
 * What surrounds an irregular outline, grown by its margin. Round corners are cut by tangents, so that a little more than
 * the margin is kept there, 3.5 % at most.
 *
 * @param pieces convex pieces in the frame of the field, which begins at the margin; they may lie on each other
 * @param directions which way the longest sides of the outline that lie askew look, the longest first, in radians
 */
record Walls(List<ConvexPolygon> pieces, List<Double> directions) {

    /** Those of a rectangle. */
    static final Walls NONE = new Walls(List.of(), List.of());

    private static final double STEP_RAD = FastMath.PI / 6;

    /** Sides that differ less from the axes are along them. */
    private static final double LEVEL = 1e-9;

    private static final int MOST_DIRECTIONS = 8;

    Walls {
        pieces = List.copyOf(pieces);
        directions = List.copyOf(directions);
    }

    static Walls of(Outline outline) {
        double margin = outline.marginMm();
        List<ConvexPolygon> pieces = new ArrayList<>();
        for (ConvexPolygon piece : Surroundings.of(outline.border())) {
            pieces.add(moved(margin > 0 ? grown(piece, margin) : piece, -margin));
        }
        return new Walls(pieces, directions(outline.border()));
    }

    private static List<Double> directions(Polygon border) {
        TreeMap<Double, Double> byLength = new TreeMap<>(Comparator.reverseOrder());
        for (int side = 0; side < border.size(); side++) {
            Vector2D along = border.corner(side + 1).subtract(border.corner(side));
            double out = FastMath.atan2(-along.getX(), along.getY());
            double quarters = out / (FastMath.PI / 2);
            if (Math.abs(quarters - Math.rint(quarters)) > LEVEL) {
                byLength.putIfAbsent(along.getNorm(), out);
            }
        }
        return byLength.values().stream().limit(MOST_DIRECTIONS).toList();
    }

    private static ConvexPolygon moved(ConvexPolygon piece, double by) {
        double[] xy = new double[2 * piece.size()];
        for (int c = 0; c < piece.size(); c++) {
            xy[2 * c] = piece.x(c) + by;
            xy[2 * c + 1] = piece.y(c) + by;
        }
        return ConvexPolygon.of(xy);
    }

    private static ConvexPolygon grown(ConvexPolygon piece, double margin) {
        List<Vector2D> corners = new ArrayList<>();
        for (int c = 0; c < piece.size(); c++) {
            double from = angle(piece, c - 1);
            double turn = angle(piece, c) - from;
            double sweep = turn - 2 * FastMath.PI * Math.floor(turn / (2 * FastMath.PI));
            int parts = Math.max(1, (int) Math.ceil(sweep / STEP_RAD));
            double out = margin / FastMath.cos(sweep / parts / 2);
            for (int part = 0; part < parts; part++) {
                double at = from + (part + 0.5) * sweep / parts;
                corners.add(piece.corner(c).add(out, new Vector2D(FastMath.cos(at), FastMath.sin(at))));
            }
        }
        return ConvexPolygon.round(corners);
    }

    private static double angle(ConvexPolygon piece, int side) {
        Vector2D out = piece.outward(Math.floorMod(side, piece.size()));
        return FastMath.atan2(out.getY(), out.getX());
    }
}
