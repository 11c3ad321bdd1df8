package dev.calotte.stl.body;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.locationtech.jts.geom.Coordinate;

/**
 * The vertices over each corner of the plan, from the bed upwards. Heights closer than 1/128 mm are one: such steps
 * cannot be printed, and some readers join their ends.
 */
final class Columns {

    static final long LEAST_STEP = Math.round(Relief.GRID / 128);

    private final Map<Coordinate, List<Long>> heights = new HashMap<>();
    private final Map<Coordinate, Integer> firsts = new HashMap<>();
    private final List<double[]> vertices = new ArrayList<>();

    Columns(List<Tile> tiles) {
        Map<Coordinate, Set<Long>> all = new TreeMap<>();
        for (Tile tile : tiles) {
            for (Tile.Side side : tile.sides()) {
                long steps = tile.stepsAt(side.from());
                if (steps < LEAST_STEP) {
                    throw new IllegalArgumentException("nothing stands over the bed at " + side.from());
                }
                all.computeIfAbsent(side.from(), corner -> new TreeSet<>(List.of(0L)))
                        .add(steps);
            }
        }
        all.forEach(this::add);
    }

    private void add(Coordinate corner, Set<Long> steps) {
        List<Long> apart = new ArrayList<>();
        firsts.put(corner, vertices.size());
        for (long step : steps) {
            if (apart.isEmpty() || step - apart.get(apart.size() - 1) >= LEAST_STEP) {
                apart.add(step);
                vertices.add(new double[] {corner.x, corner.y, step / Relief.GRID});
            }
        }
        heights.put(corner, apart);
    }

    /** How many vertices stand below a tile's own at a corner. */
    int levelOf(Tile tile, Coordinate corner) {
        long steps = tile.stepsAt(corner);
        List<Long> apart = heights.get(corner);
        int level = apart.size() - 1;
        while (apart.get(level) > steps) {
            level--;
        }
        return level;
    }

    /** The number of a vertex. */
    int vertex(Coordinate corner, int level) {
        return firsts.get(corner) + level;
    }

    List<double[]> vertices() {
        return vertices;
    }
}
