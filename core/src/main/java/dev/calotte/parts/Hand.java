package dev.calotte.parts;

/** Which of two mirror images a thing is, seen from outside. */
public enum Hand {
    /** Counter-clockwise the sizes rise: a panel's sides come short, middle, long. */
    LEFT,
    /** Clockwise the sizes rise: counter-clockwise a panel's sides come short, long, middle. */
    RIGHT,
    /** The thing is its own mirror image. */
    NONE;

    /**
     * The letter that a mark ends with.
     *
     * @return {@code L}, {@code R} or nothing
     */
    public String letter() {
        return switch (this) {
            case LEFT -> "L";
            case RIGHT -> "R";
            case NONE -> "";
        };
    }

    /**
     * The mirror image's hand.
     *
     * @return the other hand, or none
     */
    public Hand mirror() {
        return switch (this) {
            case LEFT -> RIGHT;
            case RIGHT -> LEFT;
            case NONE -> NONE;
        };
    }
}
