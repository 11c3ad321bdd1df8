package dev.calotte.contour;

/**
 * Level bands of one height over a drawing. Sides that lie on each other share at least one, and of those that they share
 * one is the lowest.
 */
final class Bands {

    private static final int MOST = 1024;

    private final double low;
    private final double heightMm;
    private final int count;

    /** Bands twice as high as sides are on the average, so that these are in few bands and bands hold few of them. */
    Bands(CutSides sides) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        double sum = 0;
        for (int number = 0; number < sides.size(); number++) {
            Side side = sides.side(number);
            least = Math.min(least, side.lowest());
            most = Math.max(most, side.highest());
            sum += side.highest() - side.lowest();
        }
        double wanted = sides.size() * (most - least) / (2 * sum);
        this.low = least;
        this.count = wanted >= 1 ? (int) Math.min(MOST, wanted) : 1;
        this.heightMm = (most - least) / count;
    }

    int count() {
        return count;
    }

    /** The band of a height; the first and the last have no end. */
    int of(double y) {
        return (int) Math.max(0, Math.min(count - 1, (y - low) / heightMm));
    }
}
