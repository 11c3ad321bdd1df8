package dev.calotte.stl.body;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/**
 * A piece of the plan with one plane over it. Tiles share whole sides and corners, or nothing.
 *
 * @param area its outline and holes
 * @param top the plane over it
 */
record Tile(Polygon area, Plane top) {

    /** A side, the tile on its left. */
    record Side(Coordinate from, Coordinate to) {

        static final Comparator<Side> ORDER = Comparator.comparing(Side::from).thenComparing(Side::to);

        double length() {
            return from.distance(to);
        }

        Side back() {
            return new Side(to, from);
        }
    }

    List<Side> sides() {
        List<Side> sides = new ArrayList<>();
        addSides(area.getExteriorRing(), true, sides);
        for (int hole = 0; hole < area.getNumInteriorRing(); hole++) {
            addSides(area.getInteriorRingN(hole), false, sides);
        }
        return sides;
    }

    private static void addSides(LinearRing ring, boolean counterClockwise, List<Side> sides) {
        Coordinate[] corners = ring.getCoordinates();
        boolean forwards = Orientation.isCCW(corners) == counterClockwise;
        for (int i = 0; i + 1 < corners.length; i++) {
            sides.add(forwards ? new Side(corners[i], corners[i + 1]) : new Side(corners[i + 1], corners[i]));
        }
    }

    /** Its height at a corner, in grid lines. */
    long stepsAt(Coordinate corner) {
        return Math.round(top.heightAt(corner.x, corner.y) * Relief.GRID);
    }
}
