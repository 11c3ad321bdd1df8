package dev.calotte.contour;

import dev.calotte.document.Drawing;
import dev.calotte.document.Polyline;
import java.util.Arrays;
import java.util.List;

/** The sides of all paths that are cut through, numbered in the order of the drawing. */
final class CutSides {

    private final List<Polyline> paths;
    private final List<String> marks;
    private final int[] firsts;
    private final int[] owners;

    CutSides(Drawing drawing) {
        this(CutPaths.of(drawing));
    }

    CutSides(CutPaths cut) {
        this.paths = cut.paths();
        this.marks = cut.marks();
        this.firsts = new int[paths.size()];
        int count = 0;
        for (int path = 0; path < firsts.length; path++) {
            firsts[path] = count;
            count += sides(paths.get(path));
        }
        this.owners = new int[count];
        for (int path = 0; path < firsts.length; path++) {
            Arrays.fill(owners, firsts[path], path + 1 < firsts.length ? firsts[path + 1] : count, path);
        }
    }

    private static int sides(Polyline path) {
        return path.isClosed() ? path.size() : path.size() - 1;
    }

    int size() {
        return owners.length;
    }

    /** Which of the paths a side belongs to. */
    int pathOf(int side) {
        return owners[side];
    }

    String markOf(int side) {
        return marks.get(pathOf(side));
    }

    boolean isStraight(int side) {
        int path = pathOf(side);
        return paths.get(path).bulge(side - firsts[path]) == 0;
    }

    Side side(int side) {
        int number = pathOf(side);
        Polyline path = paths.get(number);
        int corner = side - firsts[number];
        int next = (corner + 1) % path.size();
        return new Side(path.x(corner), path.y(corner), path.x(next), path.y(next));
    }

    /** The number of the first side of the path that is so manieth among those that are cut. */
    int firstOf(int path) {
        return firsts[path];
    }
}
