package dev.calotte.check;

import java.util.Arrays;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** Directions in space, each told from others by a thousandth of its length. */
final class Directions {

    private static final double CELL = 1e-3;
    private static final int CELLS = 1 << 12;

    private long[] cells = new long[64];
    private int size;
    private boolean sorted = true;

    void add(Vector3D way) {
        if (way.getNorm() > 0) {
            if (size == cells.length) {
                sort();
                cells = 2 * size > cells.length ? Arrays.copyOf(cells, 2 * cells.length) : cells;
            }
            Vector3D unit = way.normalize();
            cells[size++] = key(cell(unit.getX()), cell(unit.getY()), cell(unit.getZ()));
            sorted = false;
        }
    }

    /** Each once, so that a million equal ones take no room. */
    private void sort() {
        if (!sorted) {
            Arrays.sort(cells, 0, size);
            int kept = 1;
            for (int i = 1; i < size; i++) {
                if (cells[i] != cells[kept - 1]) {
                    cells[kept++] = cells[i];
                }
            }
            size = kept;
            sorted = true;
        }
    }

    /** Whether one is there that differs by less than a cell; not for ways without length. */
    boolean holds(Vector3D way) {
        sort();
        Vector3D unit = way.normalize();
        boolean holds = false;
        for (int i = 0; i < 27 && !holds; i++) {
            long key = key(
                    cell(unit.getX()) + i % 3 - 1, cell(unit.getY()) + i / 3 % 3 - 1, cell(unit.getZ()) + i / 9 - 1);
            holds = Arrays.binarySearch(cells, 0, size, key) >= 0;
        }
        return holds;
    }

    private static int cell(double coordinate) {
        return (int) Math.rint(coordinate / CELL) + CELLS / 2;
    }

    private static long key(int x, int y, int z) {
        return ((long) x * CELLS + y) * CELLS + z;
    }
}
