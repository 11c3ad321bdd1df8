package dev.calotte.drawing;

import dev.calotte.document.Circle;
import dev.calotte.document.Polyline;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/** Shapes for JTS, arcs by many chords. */
final class Flattened {

    private static final GeometryFactory JTS = new GeometryFactory();
    private static final int CHORDS = 64;

    private Flattened() {}

    static Polygon of(Polyline path) {
        List<Coordinate> places = new ArrayList<>();
        for (int corner = 0; corner < path.size(); corner++) {
            places.add(new Coordinate(path.x(corner), path.y(corner)));
            path.arc(corner).ifPresent(arc -> {
                for (int i = 1; i < CHORDS; i++) {
                    double angle = arc.startRad() + arc.sweepRad() * i / CHORDS;
                    places.add(new Coordinate(arc.x(angle), arc.y(angle)));
                }
            });
        }
        places.add(places.get(0));
        return JTS.createPolygon(places.toArray(Coordinate[]::new));
    }

    static Polygon of(Circle circle) {
        return (Polygon)
                JTS.createPoint(new Coordinate(circle.xMm(), circle.yMm())).buffer(circle.radiusMm(), CHORDS);
    }

    static LineString line(Polyline path) {
        Coordinate[] places = new Coordinate[path.size()];
        for (int corner = 0; corner < places.length; corner++) {
            places[corner] = new Coordinate(path.x(corner), path.y(corner));
        }
        return JTS.createLineString(places);
    }

    /** The polygon of the corners, and for each arc the segment between it and its chord, by the formula for segments. */
    static double area(Polyline path) {
        double area = 0;
        for (int corner = 0; corner < path.size(); corner++) {
            int next = (corner + 1) % path.size();
            area += (path.x(corner) * path.y(next) - path.x(next) * path.y(corner)) / 2;
            area += path.arc(corner)
                    .map(arc -> arc.radiusMm() * arc.radiusMm() * (arc.sweepRad() - Math.sin(arc.sweepRad())) / 2)
                    .orElse(0.0);
        }
        return area;
    }
}
