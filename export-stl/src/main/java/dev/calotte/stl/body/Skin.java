package dev.calotte.stl.body;

import dev.calotte.document.Mesh;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.triangulate.polygon.ConstrainedDelaunayTriangulator;
import org.locationtech.jts.triangulate.tri.Tri;

/**
 * The surface of a body of tiles: each tile twice, as its top and on the bed, and an upright wall wherever two tiles, or
 * a tile and nothing, meet at different heights. A wall takes in every vertex that stands on its two upright sides, so
 * that neighbouring walls share whole edges.
 */
final class Skin {

    private static final int BED = 0;

    private final List<Tile> tiles;
    private final Columns columns;
    private final List<int[]> triangles = new ArrayList<>();

    Skin(List<Tile> tiles) {
        this.tiles = tiles;
        this.columns = new Columns(tiles);
    }

    Mesh mesh(String name, String title) {
        tiles.forEach(this::addFaces);
        addWalls();
        return new Packing(columns.vertices(), triangles).mesh(name, title);
    }

    private void addFaces(Tile tile) {
        for (Tri tri : new ConstrainedDelaunayTriangulator(tile.area()).getTriangles()) {
            // JTS lists the corners of a triangle clockwise
            Coordinate a = tri.getCoordinate(0);
            Coordinate b = tri.getCoordinate(2);
            Coordinate c = tri.getCoordinate(1);
            add(top(tile, a), top(tile, b), top(tile, c));
            add(columns.vertex(a, BED), columns.vertex(c, BED), columns.vertex(b, BED));
        }
    }

    private int top(Tile tile, Coordinate corner) {
        return columns.vertex(corner, columns.levelOf(tile, corner));
    }

    private void addWalls() {
        Map<Tile.Side, Tile> beside = new TreeMap<>(Tile.Side.ORDER);
        tiles.forEach(tile -> tile.sides().forEach(side -> beside.put(side, tile)));
        beside.forEach((side, tile) -> {
            Tile other = beside.get(side.back());
            int from = columns.levelOf(tile, side.from()) - levelOf(other, side.from());
            int to = columns.levelOf(tile, side.to()) - levelOf(other, side.to());
            if (Integer.signum(from) * Integer.signum(to) < 0) {
                throw new IllegalArgumentException("two tops cross between " + side.from() + " and " + side.to());
            }
            if (from + to > 0) {
                addWall(levels(other, tile, side.from()), levels(other, tile, side.to()));
            }
        });
    }

    private int levelOf(Tile tileOrNothing, Coordinate corner) {
        return tileOrNothing == null ? BED : columns.levelOf(tileOrNothing, corner);
    }

    /** The vertices of a column from a lower tile, or the bed, up to a higher one. */
    private int[] levels(Tile lower, Tile higher, Coordinate corner) {
        int least = levelOf(lower, corner);
        int[] vertices = new int[columns.levelOf(higher, corner) - least + 1];
        for (int i = 0; i < vertices.length; i++) {
            vertices[i] = columns.vertex(corner, least + i);
        }
        return vertices;
    }

    /** Seen from its outside the side's start is on the left; the strip is laid from below, the shorter step first. */
    private void addWall(int[] left, int[] right) {
        int i = 0;
        int j = 0;
        while (i + 1 < left.length || j + 1 < right.length) {
            boolean onTheRight =
                    i + 1 == left.length || (j + 1 < right.length && heightOf(right[j + 1]) <= heightOf(left[i + 1]));
            if (onTheRight) {
                add(left[i], right[j], right[++j]);
            } else {
                add(left[i], right[j], left[++i]);
            }
        }
    }

    private double heightOf(int vertex) {
        return columns.vertices().get(vertex)[2];
    }

    private void add(int a, int b, int c) {
        triangles.add(new int[] {a, b, c});
    }
}
