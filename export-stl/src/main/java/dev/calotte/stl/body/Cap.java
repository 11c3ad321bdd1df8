package dev.calotte.stl.body;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.triangulate.polygon.ConstrainedDelaunayTriangulator;
import org.locationtech.jts.triangulate.tri.Tri;

/** The flat face that closes a cut surface, which may have several outlines, and holes in them. */
final class Cap {

    private static final GeometryFactory PLANE = new GeometryFactory();

    private final Soup soup;
    private final int across;
    private final int up;
    private final Map<Coordinate, Integer> vertices = new TreeMap<>();

    /** Seen from outside, which is from below where the upper part is kept. */
    Cap(Soup soup, int axis, boolean upperKept) {
        this.soup = soup;
        this.across = (axis + (upperKept ? 2 : 1)) % 3;
        this.up = (axis + (upperKept ? 1 : 2)) % 3;
    }

    /** Adds the face to the left of a border. */
    void close(Map<Integer, Integer> border) {
        List<LinearRing> outlines = new ArrayList<>();
        List<LinearRing> holes = new ArrayList<>();
        Map<Integer, Integer> left = new TreeMap<>(border);
        while (!left.isEmpty()) {
            LinearRing ring = ring(left);
            (Orientation.isCCW(ring.getCoordinates()) ? outlines : holes).add(ring);
        }
        // the smallest outline round a hole is its own
        outlines.sort(
                Comparator.comparingDouble(ring -> PLANE.createPolygon(ring).getArea()));
        for (LinearRing outline : outlines) {
            Polygon filled = PLANE.createPolygon(outline);
            List<LinearRing> own = holes.stream()
                    .filter(hole -> filled.contains(PLANE.createPolygon(hole)))
                    .toList();
            holes.removeAll(own);
            fill(PLANE.createPolygon(outline, own.toArray(new LinearRing[0])));
        }
    }

    private LinearRing ring(Map<Integer, Integer> border) {
        List<Coordinate> corners = new ArrayList<>();
        int first = border.keySet().iterator().next();
        for (Integer at = first; border.containsKey(at); ) {
            double[] place = soup.vertices().get(at);
            Coordinate corner = new Coordinate(place[across], place[up]);
            vertices.put(corner, at);
            corners.add(corner);
            at = border.remove(at);
        }
        corners.add(corners.get(0));
        return PLANE.createLinearRing(corners.toArray(new Coordinate[0]));
    }

    private void fill(Polygon area) {
        for (Tri tri : new ConstrainedDelaunayTriangulator(area).getTriangles()) {
            // JTS lists the corners of a triangle clockwise
            soup.triangle(
                    vertices.get(tri.getCoordinate(0)),
                    vertices.get(tri.getCoordinate(2)),
                    vertices.get(tri.getCoordinate(1)));
        }
    }
}
