package dev.calotte.stl.body;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/** Puts a corner into each side along which the tops of two tiles cross, so that of every side one tile is the higher. */
final class Crossings {

    private static final GeometryFactory PLANE = new GeometryFactory();

    private final Map<Tile.Side, Tile> beside = new TreeMap<>(Tile.Side.ORDER);

    private Crossings(List<Tile> tiles) {
        tiles.forEach(tile -> tile.sides().forEach(side -> beside.put(side, tile)));
    }

    static List<Tile> divide(List<Tile> tiles) {
        Crossings crossings = new Crossings(tiles);
        return tiles.stream().map(crossings::divided).toList();
    }

    private Tile divided(Tile tile) {
        LinearRing shell = divided(tile.area().getExteriorRing());
        LinearRing[] holes = new LinearRing[tile.area().getNumInteriorRing()];
        for (int i = 0; i < holes.length; i++) {
            holes[i] = divided(tile.area().getInteriorRingN(i));
        }
        Polygon area = PLANE.createPolygon(shell, holes);
        return new Tile(area, tile.top());
    }

    private LinearRing divided(LinearRing ring) {
        Coordinate[] corners = ring.getCoordinates();
        List<Coordinate> all = new ArrayList<>(List.of(corners[0]));
        for (int i = 1; i < corners.length; i++) {
            // always reckoned in the same direction, so that both tiles get the same corner
            boolean rising = corners[i - 1].compareTo(corners[i]) < 0;
            addCrossing(
                    rising ? new Tile.Side(corners[i - 1], corners[i]) : new Tile.Side(corners[i], corners[i - 1]),
                    all);
            all.add(corners[i]);
        }
        return PLANE.createLinearRing(all.toArray(new Coordinate[0]));
    }

    private void addCrossing(Tile.Side side, List<Coordinate> corners) {
        Tile one = beside.get(side);
        Tile other = beside.get(side.back());
        if (one == null || other == null) {
            return;
        }
        double from = one.stepsAt(side.from()) - other.stepsAt(side.from());
        double to = one.stepsAt(side.to()) - other.stepsAt(side.to());
        boolean cross =
                Math.signum(from) * Math.signum(to) < 0 && Math.min(Math.abs(from), Math.abs(to)) >= Columns.LEAST_STEP;
        if (cross) {
            double share = from / (from - to);
            corners.add(new Coordinate(
                    onGrid(side.from().x + share * (side.to().x - side.from().x)),
                    onGrid(side.from().y + share * (side.to().y - side.from().y))));
        }
    }

    private static double onGrid(double mm) {
        return Math.rint(mm * Relief.GRID) / Relief.GRID;
    }
}
