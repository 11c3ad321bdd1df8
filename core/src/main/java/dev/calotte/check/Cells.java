package dev.calotte.check;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.IntPredicate;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * Finds things by their places, up to a small distance, each once. Work grows with how many there are: of things at one and
 * the same place only some are looked at.
 */
final class Cells {

    private static final int MOST_LOOKED_AT = 2000;
    private static final double FURTHEST = 1L << 40;

    private final double sizeMm;
    private final List<Thing> things = new ArrayList<>();
    private final boolean[] taken;

    /**
     * Sorts things.
     *
     * @param places where they are
     * @param sizeMm how wide a cell is: some times the distance up to which they are searched for
     */
    Cells(List<Vector3D> places, double sizeMm) {
        this.sizeMm = sizeMm;
        for (int i = 0; i < places.size(); i++) {
            Vector3D at = places.get(i);
            things.add(new Thing(cell(at.getX()), cell(at.getY()), cell(at.getZ()), i));
        }
        things.sort(null);
        this.taken = new boolean[places.size()];
    }

    private record Thing(long x, long y, long z, int number) implements Comparable<Thing> {

        @Override
        public int compareTo(Thing other) {
            int byX = Long.compare(x, other.x);
            int byY = byX != 0 ? byX : Long.compare(y, other.y);
            int byZ = byY != 0 ? byY : Long.compare(z, other.z);
            return byZ != 0 ? byZ : Integer.compare(number, other.number);
        }
    }

    private long cell(double coordinate) {
        return (long) Math.floor(Math.max(-FURTHEST, Math.min(FURTHEST, coordinate)) / sizeMm);
    }

    /** Takes one that is so near and is what is looked for, if it was not taken before. */
    boolean take(Vector3D at, double withinMm, IntPredicate which) {
        boolean found = false;
        for (long x = cell(at.getX() - withinMm); !found && x <= cell(at.getX() + withinMm); x++) {
            for (long y = cell(at.getY() - withinMm); !found && y <= cell(at.getY() + withinMm); y++) {
                for (long z = cell(at.getZ() - withinMm); !found && z <= cell(at.getZ() + withinMm); z++) {
                    found = take(x, y, z, which);
                }
            }
        }
        return found;
    }

    private boolean take(long x, long y, long z, IntPredicate which) {
        int insert = Collections.binarySearch(things, new Thing(x, y, z, -1));
        int from = -1 - insert;
        for (int i = from; i < things.size() && i < from + MOST_LOOKED_AT; i++) {
            Thing thing = things.get(i);
            if (thing.x != x || thing.y != y || thing.z != z) {
                return false;
            }
            if (!taken[thing.number] && which.test(thing.number)) {
                taken[thing.number] = true;
                return true;
            }
        }
        return false;
    }

    /** The first that was not taken, or how many there are. */
    int firstLeft() {
        int first = 0;
        while (first < taken.length && taken[first]) {
            first++;
        }
        return first;
    }

    int left() {
        int left = 0;
        for (boolean each : taken) {
            left += each ? 0 : 1;
        }
        return left;
    }
}
