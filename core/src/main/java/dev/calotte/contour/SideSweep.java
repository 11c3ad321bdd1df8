package dev.calotte.contour;

import java.util.Arrays;

/**
 * Finds the straight sides that lie on each other. A line sweeps from left to right; each side that it meets is compared
 * with those under the line that run about the same way. Needs a number for each side and little else, so that drawings
 * with a million sides can be looked through.
 */
final class SideSweep {

    /** None is narrower than 2.8 degrees. */
    private static final int DIRECTIONS = 40;

    private static final long INDEX = 0xffff_ffffL;

    private final CutSides sides;
    private final Bands bands;
    private final Under[] under;

    /** Takes two sides that lie on each other. */
    interface Pair {
        void found(int one, int other);
    }

    SideSweep(CutSides sides) {
        this.sides = sides;
        this.bands = new Bands(sides);
        this.under = new Under[DIRECTIONS * bands.count()];
    }

    void each(Pair pair) {
        for (long key : fromLeftToRight()) {
            int number = (int) (key & INDEX);
            Side side = sides.side(number);
            int direction = direction(side);
            int first = bands.of(side.lowest() - Side.APART);
            int last = bands.of(side.highest() + Side.APART);
            for (int band = first; band <= last; band++) {
                for (int turn = -1; turn <= 1; turn++) {
                    under(Math.floorMod(direction + turn, DIRECTIONS), band).compare(number, side, band, pair);
                }
                under(direction, band).add(number, side);
            }
        }
    }

    private Under under(int direction, int band) {
        int place = direction * bands.count() + band;
        if (under[place] == null) {
            under[place] = new Under();
        }
        return under[place];
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

    /** Half a turn along the square that stands on a corner, which needs no angle. */
    private static int direction(Side side) {
        double across = side.toX() - side.fromX();
        double upwards = side.toY() - side.fromY();
        double length = Math.abs(across) + Math.abs(upwards);
        double quarter = length > 0 ? Math.abs(upwards) / length : 0;
        double half = across < 0 == upwards < 0 ? quarter : 2 - quarter;
        return Math.min(DIRECTIONS - 1, (int) (DIRECTIONS / 2 * half));
    }

    /** Sides of one direction in one band under the line. */
    private final class Under {

        private int[] numbers = new int[4];
        private Side[] known = new Side[4];
        /** Where each is lowest and highest, and its right end. */
        private double[] boxes = new double[12];

        private int size;

        void add(int number, Side side) {
            if (size == numbers.length) {
                numbers = Arrays.copyOf(numbers, 2 * size);
                known = Arrays.copyOf(known, 2 * size);
                boxes = Arrays.copyOf(boxes, 6 * size);
            }
            boxes[3 * size] = side.lowest();
            boxes[3 * size + 1] = side.highest();
            boxes[3 * size + 2] = Math.max(side.fromX(), side.toX());
            numbers[size] = number;
            known[size] = side;
            size++;
        }

        /** Compares a side with those here, and lets go of those that the line has left behind. */
        void compare(int number, Side side, int band, Pair pair) {
            double line = Math.min(side.fromX(), side.toX());
            double behind = line - Side.APART - Math.abs(line) * 1e-6;
            double low = side.lowest() - Side.APART;
            double high = side.highest() + Side.APART;
            int kept = 0;
            for (int i = 0; i < size; i++) {
                if (boxes[3 * i + 2] >= behind) {
                    boolean level = boxes[3 * i] <= high && boxes[3 * i + 1] >= low;
                    if (level && isLowest(band, side, known[i]) && side.overlaps(known[i])) {
                        pair.found(Math.min(number, numbers[i]), Math.max(number, numbers[i]));
                    }
                    keep(i, kept++);
                }
            }
            Arrays.fill(known, kept, size, null);
            size = kept;
        }

        private void keep(int from, int to) {
            if (from != to) {
                numbers[to] = numbers[from];
                known[to] = known[from];
                System.arraycopy(boxes, 3 * from, boxes, 3 * to, 3);
            }
        }

        /** Whether two sides share no lower band, so that they are told once. */
        private boolean isLowest(int band, Side one, Side other) {
            return band == bands.of(Math.max(one.lowest(), other.lowest()) - Side.APART);
        }
    }
}
