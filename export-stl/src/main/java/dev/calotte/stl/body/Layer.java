package dev.calotte.stl.body;

import java.util.Optional;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Location;

/** An area that covers what was there before: with a top of its own, or with nothing. */
final class Layer {

    final Geometry area;
    final Optional<Plane> top;
    private final IndexedPointInAreaLocator inside;

    Layer(Geometry area, Optional<Plane> top) {
        this.area = area;
        this.top = top;
        this.inside = new IndexedPointInAreaLocator(area);
    }

    boolean covers(Coordinate place) {
        return area.getEnvelopeInternal().contains(place) && inside.locate(place) != Location.EXTERIOR;
    }
}
