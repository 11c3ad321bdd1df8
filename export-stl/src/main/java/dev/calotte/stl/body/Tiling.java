package dev.calotte.stl.body;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;
import org.locationtech.jts.operation.polygonize.Polygonizer;

/**
 * Cuts the plan along all outlines at once, on the grid. What JTS gives back is sorted: its planar graphs keep edges in
 * hash sets, whose order is an accident.
 */
final class Tiling {

    /** Narrower tiles come from rounding two outlines that run along each other, and belong to a neighbour. */
    private static final double NARROWEST = 1.0 / 128;

    private final List<Layer> layers;
    private final List<Layer> bounds;
    private final List<Polygon> areas;
    private final List<Optional<Plane>> tops = new ArrayList<>();

    private Tiling(List<Layer> layers, List<Layer> bounds) {
        this.layers = layers;
        this.bounds = bounds;
        this.areas = areas();
    }

    static List<Tile> of(List<Layer> layers, List<Layer> bounds) {
        Tiling tiling = new Tiling(layers, bounds);
        tiling.areas.forEach(area -> tiling.tops.add(tiling.topOf(area)));
        tiling.mendNarrow();
        return tiling.tiles();
    }

    private List<Polygon> areas() {
        PrecisionModel grid = new PrecisionModel(Relief.GRID);
        List<Geometry> lines = new ArrayList<>();
        layers.forEach(layer -> lines.add(layer.area.getBoundary()));
        bounds.forEach(layer -> lines.add(layer.area.getBoundary()));
        Geometry noded = UnaryUnionNG.union(lines, new GeometryFactory(grid), grid);
        Polygonizer polygonizer = new Polygonizer();
        polygonizer.add(noded);
        List<Polygon> found = new ArrayList<>();
        for (Object polygon : polygonizer.getPolygons()) {
            Polygon area = (Polygon) polygon;
            area.normalize();
            found.add(area);
        }
        found.sort(Polygon::compareTo);
        return found;
    }

    private Optional<Plane> topOf(Polygon area) {
        Coordinate inside = area.getInteriorPoint().getCoordinate();
        if (!bounds.stream().allMatch(bound -> bound.covers(inside))) {
            return Optional.empty();
        }
        for (int i = layers.size() - 1; i >= 0; i--) {
            if (layers.get(i).covers(inside)) {
                return layers.get(i).top;
            }
        }
        return Optional.empty();
    }

    /** A narrow tile takes the top of the neighbour that it shares its longest side with. */
    private void mendNarrow() {
        Map<Tile.Side, Integer> wide = new TreeMap<>(Tile.Side.ORDER);
        for (int i = 0; i < areas.size(); i++) {
            if (!isNarrow(areas.get(i))) {
                int number = i;
                sides(i).forEach(side -> wide.put(side, number));
            }
        }
        for (int i = 0; i < areas.size(); i++) {
            if (isNarrow(areas.get(i))) {
                Tile.Side longest = sides(i).stream()
                        .max(Comparator.comparingDouble(Tile.Side::length))
                        .orElseThrow();
                Optional<Plane> neighbour =
                        Optional.ofNullable(wide.get(longest.back())).flatMap(tops::get);
                tops.set(i, neighbour);
            }
        }
    }

    private List<Tile.Side> sides(int area) {
        return new Tile(areas.get(area), Plane.level(0)).sides();
    }

    private static boolean isNarrow(Polygon area) {
        return 2 * area.getArea() / area.getLength() < NARROWEST;
    }

    private List<Tile> tiles() {
        List<Tile> tiles = new ArrayList<>();
        for (int i = 0; i < areas.size(); i++) {
            Polygon area = areas.get(i);
            tops.get(i).ifPresent(top -> tiles.add(new Tile(area, top)));
        }
        return tiles;
    }
}
