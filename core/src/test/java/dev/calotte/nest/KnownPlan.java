package dev.calotte.nest;

import dev.calotte.geometry.ConvexPolygon;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * Parts that are known to have room: a rectangle is cut by straight lines, and each half is cut back by half the spacing.
 * So nothing that is known for sure about all plans may say that these parts take more.
 */
final class KnownPlan {

    private static final GeometryFactory PLANE = new GeometryFactory();
    private static final double FAR = 1e5;

    private final Random random;
    private final double spacing;
    private final boolean slanted;
    private final List<Piece> pieces = new ArrayList<>();

    private KnownPlan(Random random, double spacing, boolean slanted) {
        this.random = random;
        this.spacing = spacing;
        this.slanted = slanted;
    }

    /** What so many cuts make of each of so many rectangles, cut along or across, or at a slant; each part keeps its grain. */
    static List<Piece> of(Random random, double spacing, boolean slanted, double... lengthsAndWidths) {
        KnownPlan plan = new KnownPlan(random, spacing, slanted);
        for (int i = 0; i < lengthsAndWidths.length; i += 2) {
            plan.divide(rectangle(0, 0, lengthsAndWidths[i], lengthsAndWidths[i + 1]), 2);
        }
        return plan.pieces;
    }

    static Geometry rectangle(double left, double low, double right, double high) {
        return polygon(left, low, right, low, right, high, left, high);
    }

    private static Geometry polygon(double... xy) {
        Coordinate[] ring = new Coordinate[xy.length / 2 + 1];
        for (int c = 0; c < ring.length; c++) {
            int d = 2 * (c % (ring.length - 1));
            ring[c] = new Coordinate(xy[d], xy[d + 1]);
        }
        return PLANE.createPolygon(ring);
    }

    static Geometry polygon(ConvexPolygon outline) {
        double[] xy = new double[2 * outline.size()];
        for (int c = 0; c < outline.size(); c++) {
            xy[2 * c] = outline.x(c);
            xy[2 * c + 1] = outline.y(c);
        }
        return polygon(xy);
    }

    private void divide(Geometry part, int cuts) {
        if (cuts == 0) {
            add(part);
            return;
        }
        double angle = slanted ? Math.PI * random.nextDouble() : Math.PI / 2 * random.nextInt(2);
        double nx = Math.cos(angle);
        double ny = Math.sin(angle);
        double x = part.getCentroid().getX() + 40 * random.nextDouble();
        double y = part.getCentroid().getY() + 40 * random.nextDouble();
        divide(half(part, nx, ny, nx * x + ny * y + spacing / 2), cuts - 1);
        divide(half(part, -nx, -ny, -nx * x - ny * y + spacing / 2), cuts - 1);
    }

    /** What lies beyond a line. */
    private static Geometry half(Geometry part, double nx, double ny, double from) {
        double x = nx * from;
        double y = ny * from;
        return part.intersection(polygon(
                x + FAR * ny,
                y - FAR * nx,
                x + FAR * (nx + ny),
                y + FAR * (ny - nx),
                x + FAR * (nx - ny),
                y + FAR * (ny + nx),
                x - FAR * ny,
                y + FAR * nx));
    }

    private void add(Geometry part) {
        Coordinate[] ring = part.norm().reverse().getCoordinates();
        double[] xy = new double[2 * ring.length - 2];
        for (int c = 0; c < ring.length - 1; c++) {
            xy[2 * c] = ring[c].x;
            xy[2 * c + 1] = ring[c].y;
        }
        pieces.add(new Piece("P" + pieces.size(), ConvexPolygon.of(xy), 1, false, OptionalDouble.of(0)));
    }
}
