package dev.calotte.contour;

import java.util.Arrays;

/**
 * Finds the straight sides that lie on each other. A line sweeps from left to right; each side that it meets is compared
 * with those under the line that run about the same way. Needs a number for each side and little else, so that drawings
 * with a million sides can be looked through.
 */
final class SideSweep {

    private static final int DIRECTIONS = 64;
    private static final long INDEX = 0xffff_ffffL;

    private final CutSides sides;
    private final Under[] under = new Under[DIRECTIONS];

    /** Takes two sides that lie on each other. */
    interface Pair {
        void found(int one, int other);
    }

    SideSweep(CutSides sides) {
        this.sides = sides;
        Arrays.setAll(under, direction -> new Under());
    }

    void each(Pair pair) {
        for (long key : fromLeftToRight()) {
            int number = (int) (key & INDEX);
            Side side = sides.side(number);
            int direction = direction(side);
            for (int turn = -1; turn <= 1; turn++) {
                under[Math.floorMod(direction + turn, DIRECTIONS)].compare(number, side, pair);
            }
            under[direction].add(number, side);
        }
    }

    /** The straight sides by their left ends; which of two that begin within a float's rounding comes first is all one. */
    private long[] fromLeftToRight() {
        long[] keys = new long[sides.size()];
        int count = 0;
        for (int number = 0; number < keys.length; number++) {
            if (sides.isStraight(number)) {
                Side side = sides.side(number);
                int bits = Float.floatToIntBits((float) Math.min(side.fromX(), side.toX()));
                int sortable = bits ^ ((bits >> 31) & Integer.MAX_VALUE);
                keys[count++] = ((long) sortable << 32) | number;
            }
        }
        long[] sorted = count == keys.length ? keys : Arrays.copyOf(keys, count);
        Arrays.sort(sorted);
        return sorted;
    }

    private static int direction(Side side) {
        double angle = StrictMath.atan2(side.toY() - side.fromY(), side.toX() - side.fromX());
        double turns = angle / Math.PI;
        return Math.min(DIRECTIONS - 1, (int) (DIRECTIONS * (turns - Math.floor(turns))));
    }

    /** Sides of one direction under the line. */
    private static final class Under {

        private int[] numbers = new int[4];
        private Side[] known = new Side[4];
        private int size;

        void add(int number, Side side) {
            if (size == numbers.length) {
                numbers = Arrays.copyOf(numbers, 2 * size);
                known = Arrays.copyOf(known, 2 * size);
            }
            numbers[size] = number;
            known[size] = side;
            size++;
        }

        /** Compares a side with those here, and lets go of those that the line has left behind. */
        void compare(int number, Side side, Pair pair) {
            double line = Math.min(side.fromX(), side.toX());
            double behind = line - Side.APART - Math.abs(line) * 1e-6;
            double low = Math.min(side.fromY(), side.toY()) - Side.APART;
            double high = Math.max(side.fromY(), side.toY()) + Side.APART;
            int kept = 0;
            for (int i = 0; i < size; i++) {
                Side other = known[i];
                if (Math.max(other.fromX(), other.toX()) >= behind) {
                    boolean level =
                            Math.min(other.fromY(), other.toY()) <= high && Math.max(other.fromY(), other.toY()) >= low;
                    if (level && side.overlaps(other)) {
                        pair.found(Math.min(number, numbers[i]), Math.max(number, numbers[i]));
                    }
                    numbers[kept] = numbers[i];
                    known[kept++] = other;
                }
            }
            Arrays.fill(known, kept, size, null);
            size = kept;
        }
    }
}
