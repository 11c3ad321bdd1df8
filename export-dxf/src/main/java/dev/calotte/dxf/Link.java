package dev.calotte.dxf;

/**
 * A line or an arc with two ends.
 *
 * @param fromX where it begins
 * @param fromY where it begins
 * @param toX where it ends
 * @param toY where it ends
 * @param bulge how it bends
 */
record Link(double fromX, double fromY, double toX, double toY, double bulge) {

    private static final double FULL = 360;

    static Link line(Entity entity) throws DxfFormatException {
        if (entity.number(30, 0) != entity.number(31, 0)) {
            throw entity.wrong("it does not lie flat");
        }
        return new Link(entity.number(10), entity.number(20), entity.number(11), entity.number(21), 0);
    }

    /** An arc runs counter-clockwise; one whose ends are the same is a circle. */
    static Link arc(Entity entity) throws DxfFormatException {
        double x = entity.number(10);
        double y = entity.number(20);
        double radius = entity.number(40);
        if (!(radius > 0)) {
            throw entity.wrong("its radius is not above 0");
        }
        double start = entity.number(50);
        double turn = (entity.number(51) - start) / FULL;
        double sweep = Math.toRadians(FULL * (turn - Math.floor(turn)));
        double begin = Math.toRadians(start);
        return new Link(
                x + radius * StrictMath.cos(begin),
                y + radius * StrictMath.sin(begin),
                x + radius * StrictMath.cos(begin + sweep),
                y + radius * StrictMath.sin(begin + sweep),
                sweep == 0 ? Double.POSITIVE_INFINITY : StrictMath.tan(sweep / 4));
    }

    boolean isFull() {
        return Double.isInfinite(bulge);
    }

    Link reversed() {
        return new Link(/* fromX= */ toX, /* fromY= */ toY, /* toX= */ fromX, /* toY= */ fromY, -bulge);
    }
}
