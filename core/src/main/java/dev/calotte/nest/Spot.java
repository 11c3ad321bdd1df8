package dev.calotte.nest;

/** Where a part of a kind lies in a field: mirrored if need be, turned, and shifted, as {@link Placed} tells. */
record Spot(int kind, boolean mirrored, double turnRad, double x, double y) {

    Spot moved(double dx, double dy) {
        return new Spot(kind, mirrored, turnRad, x + dx, y + dy);
    }
}
