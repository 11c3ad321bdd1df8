package dev.calotte.model;

import dev.calotte.document.Drawing;
import dev.calotte.document.Drawing.Part;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.dome.Base;
import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Opening;
import dev.calotte.dome.Size;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** Domes to make models of, and outlines as another library sees them. */
final class Models {

    private static final GeometryFactory PLANE = new GeometryFactory();

    private Models() {}

    static Parts whole(Solid solid, int frequency) {
        return parts(spec(solid, frequency));
    }

    static Parts parts(DomeSpec spec) {
        return Parts.of(Dome.of(spec), Joinery.nodeToNode());
    }

    static DomeSpec spec(Solid solid, int frequency) {
        return DomeSpec.of(solid, Breakdown.of(frequency), Size.radius(3000));
    }

    static Parts orchard() {
        return parts(spec(Solid.ICOSAHEDRON, 3).withKeep(new Keep.Rows(5, 9)));
    }

    /** With a door in it, and its base made level. */
    static Parts opened() {
        Dome dome =
                Dome.of(spec(Solid.ICOSAHEDRON, 3).withKeep(new Keep.Rows(4, 9)).withBase(Base.LEVEL));
        int last = dome.panels().size() - 1;
        return Parts.of(
                dome.withOpenings(List.of(new Opening("door", List.of(last - 1, last), true))), Joinery.nodeToNode());
    }

    /** The line round a part. */
    static Polyline outline(Part part) {
        return (Polyline) part.shapes().stream()
                .filter(shape -> shape.operation() == Operation.CUT_OUTER)
                .findFirst()
                .orElseThrow();
    }

    static List<Part> pieces(List<Drawing> drawings) {
        return drawings.stream()
                .flatMap(drawing -> drawing.parts().stream())
                .filter(part -> !part.mark().equals("SHEET"))
                .toList();
    }

    static Polygon polygon(Polyline path) {
        List<double[]> corners = new ArrayList<>();
        for (int c = 0; c < path.size(); c++) {
            corners.add(new double[] {path.x(c), path.y(c)});
        }
        return polygon(corners);
    }

    static Polygon polygon(List<double[]> corners) {
        Coordinate[] ring = new Coordinate[corners.size() + 1];
        for (int c = 0; c < corners.size(); c++) {
            ring[c] = new Coordinate(corners.get(c)[0], corners.get(c)[1]);
        }
        ring[corners.size()] = ring[0];
        return PLANE.createPolygon(ring);
    }
}
