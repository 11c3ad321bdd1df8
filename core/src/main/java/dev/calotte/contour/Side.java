package dev.calotte.contour;

/**
 * A straight side.
 *
 * @param fromX where it begins
 * @param fromY where it begins
 * @param toX where it ends
 * @param toY where it ends
 */
record Side(double fromX, double fromY, double toX, double toY) {

    /** Cuts that are no further apart are one: far below what any machine holds, far above rounding. */
    static final double APART = 1e-3;

    double length() {
        double across = toX - fromX;
        double upwards = toY - fromY;
        return Math.sqrt(across * across + upwards * upwards);
    }

    double lowest() {
        return Math.min(fromY, toY);
    }

    double highest() {
        return Math.max(fromY, toY);
    }

    double leftEnd() {
        return Math.min(fromX, toX);
    }

    double rightEnd() {
        return Math.max(fromX, toX);
    }

    Side reversed() {
        return new Side(/* fromX= */ toX, /* fromY= */ toY, /* toX= */ fromX, /* toY= */ fromY);
    }

    /** From the end of this one to the beginning of another one. */
    Side upTo(Side other) {
        double x = other.fromX;
        double y = other.fromY;
        return new Side(/* fromX= */ toX, /* fromY= */ toY, x, y);
    }

    /** How far along from its beginning a place lies. */
    double along(double x, double y) {
        return ((x - fromX) * (toX - fromX) + (y - fromY) * (toY - fromY)) / length();
    }

    private double aside(double x, double y) {
        return Math.abs((x - fromX) * (toY - fromY) - (y - fromY) * (toX - fromX)) / length();
    }

    /** Whether this side and another one lie on each other, over more than a point. */
    boolean overlaps(Side other) {
        boolean longer = length() >= other.length();
        return longer ? holds(other) : other.holds(this);
    }

    /** Whether a shorter side lies along this one, and at least in part between its ends. */
    private boolean holds(Side shorter) {
        if (shorter.length() <= APART
                || aside(shorter.fromX, shorter.fromY) > APART
                || aside(shorter.toX, shorter.toY) > APART) {
            return false;
        }
        double one = along(shorter.fromX, shorter.fromY);
        double other = along(shorter.toX, shorter.toY);
        return Math.min(length(), Math.max(one, other)) - Math.max(0, Math.min(one, other)) > APART;
    }
}
