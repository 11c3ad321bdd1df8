package dev.calotte.contour;

/**
 * Finds the straight sides that lie on each other. A line sweeps from left to right; each side that it meets is compared
 * with those under the line that run about the same way. Needs a number for each side and little else, so that drawings
 * with a million sides can be looked through.
 */
final class SideSweep {

    /** None is narrower than 2.8 degrees. */
    private static final int DIRECTIONS = 40;

    private final CutSides sides;
    private final Bands bands;
    private final Strip[] under;

    /** Takes two sides that lie on each other. */
    interface Pair {
        void found(int one, int other);
    }

    SideSweep(CutSides sides) {
        this.sides = sides;
        this.bands = new Bands(
                sides.size(),
                number -> sides.side(number).lowest(),
                number -> sides.side(number).highest());
        this.under = new Strip[DIRECTIONS * bands.count()];
    }

    void each(Pair pair) {
        LeftEnds order = fromLeftToRight();
        for (int place = 0; place < order.size(); place++) {
            int number = order.number(place);
            Side side = sides.side(number);
            int direction = direction(side);
            int first = bands.of(side.lowest() - Side.APART);
            int last = bands.of(side.highest() + Side.APART);
            for (int band = first; band <= last; band++) {
                for (int turn = -1; turn <= 1; turn++) {
                    Strip strip = under(Math.floorMod(direction + turn, DIRECTIONS), band);
                    strip.leaveBehind(side.leftEnd());
                    compare(number, side, strip, band, pair);
                }
                under(direction, band).add(number, side.lowest(), side.highest(), side.rightEnd());
            }
        }
    }

    /** Compares a side with those of one direction in one band. */
    private void compare(int number, Side side, Strip strip, int band, Pair pair) {
        for (int i = 0; i < strip.size(); i++) {
            if (strip.isLevel(i, side.lowest(), side.highest())) {
                int other = strip.number(i);
                Side known = sides.side(other);
                if (isLowest(band, side, known) && side.overlaps(known)) {
                    pair.found(Math.min(number, other), Math.max(number, other));
                }
            }
        }
    }

    /** Whether two sides share no lower band, so that they are told once. */
    private boolean isLowest(int band, Side one, Side other) {
        return band == bands.of(Math.max(one.lowest(), other.lowest()) - Side.APART);
    }

    private Strip under(int direction, int band) {
        int place = direction * bands.count() + band;
        if (under[place] == null) {
            under[place] = new Strip();
        }
        return under[place];
    }

    private LeftEnds fromLeftToRight() {
        LeftEnds order = new LeftEnds(sides.size());
        for (int number = 0; number < sides.size(); number++) {
            if (sides.isStraight(number)) {
                order.add(number, sides.side(number).leftEnd());
            }
        }
        order.sort();
        return order;
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
}
