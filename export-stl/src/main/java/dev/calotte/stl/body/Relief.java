package dev.calotte.stl.body;

import dev.calotte.document.Mesh;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;

/**
 * A body of areas painted one over the other, as on a map: where areas overlap the later one counts. Its underside is
 * z = 0, its sides are upright. All coordinates lie on a grid of 1/4096 mm, which single precision holds exactly up to
 * 4 m, so that rounding to it once is the only rounding.
 */
final class Relief {

    /** Grid lines a millimetre. */
    static final double GRID = 4096;

    private final List<Layer> layers;
    private final List<Layer> bounds;

    private Relief(List<Layer> layers, List<Layer> bounds) {
        this.layers = layers;
        this.bounds = bounds;
    }

    /** Nothing yet. */
    static Relief empty() {
        return new Relief(List.of(), List.of());
    }

    /** With an area of a top of its own, which lies above z = 0 everywhere in it. */
    Relief cover(Geometry area, Plane top) {
        return new Relief(with(layers, new Layer(area, Optional.of(top))), bounds);
    }

    /** With a hole right through. */
    Relief open(Geometry area) {
        return new Relief(with(layers, new Layer(area, Optional.empty())), bounds);
    }

    /** Only what lies in an area. */
    Relief only(Geometry area) {
        return new Relief(layers, with(bounds, new Layer(area, Optional.empty())));
    }

    private static List<Layer> with(List<Layer> before, Layer last) {
        List<Layer> all = new ArrayList<>(before);
        all.add(last);
        return List.copyOf(all);
    }

    /**
     * Its surface, moved so that the least x and y are 0.
     *
     * @throws IllegalArgumentException if nothing is left, or if areas touch so that no surface is closed
     */
    Mesh mesh(String name, String title) {
        List<Tile> tiles = Crossings.divide(Tiling.of(layers, bounds));
        if (tiles.isEmpty()) {
            throw new IllegalArgumentException(name + " has no area");
        }
        return new Skin(tiles).mesh(name, title);
    }
}
