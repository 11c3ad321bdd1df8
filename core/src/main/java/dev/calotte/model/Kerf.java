package dev.calotte.model;

import dev.calotte.geometry.Polygon;
import dev.calotte.units.NumberText;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * What the cutter takes away. The one place where outlines of the model are moved for it: outwards by half a kerf, which
 * makes slots and notches that are open at the outline narrower by a whole one. A part then comes out as it was drawn
 * before.
 *
 * @param mm how wide the cut is, 0 or more
 */
record Kerf(double mm) {

    /** The line along which the middle of the cutter goes, corners mitred. */
    Polygon cutLine(Polygon outline) {
        if (mm == 0) {
            return outline;
        }
        double[] moved = new double[2 * outline.size()];
        for (int c = 0; c < outline.size(); c++) {
            Vector2D before = outward(outline, c - 1);
            Vector2D after = outward(outline, c);
            double stretch = mm / 2 / (1 + before.dotProduct(after));
            moved[2 * c] = outline.x(c) + stretch * (before.getX() + after.getX());
            moved[2 * c + 1] = outline.y(c) + stretch * (before.getY() + after.getY());
        }
        return Polygon.of(moved);
    }

    private static Vector2D outward(Polygon outline, int side) {
        Vector2D along = outline.corner(side + 1).subtract(outline.corner(side)).normalize();
        return new Vector2D(along.getY(), -along.getX());
    }

    /** What has to be said wherever outlines are drawn. */
    String note() {
        return mm == 0
                ? "no kerf allowed for"
                : "kerf of " + NumberText.trimmed(mm, 3) + " mm allowed for, so do not offset again";
    }
}
