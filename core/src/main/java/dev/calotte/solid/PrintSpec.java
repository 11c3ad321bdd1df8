package dev.calotte.solid;

import java.util.Optional;

/**
 * How the scale model is printed.
 *
 * @param scale how many times smaller it is, above 0
 * @param shape what is printed of the dome
 * @param wallMm how thick a shell is
 * @param rodMm the diameter of the rods of a frame
 * @param bed what the printer takes; absent where that is not known, and the model is in one piece then
 */
public record PrintSpec(double scale, Shape shape, double wallMm, double rodMm, Optional<Bed> bed) {

    /** A sturdy shell; common practice, no source. */
    public static final double USUAL_WALL_MM = 2;

    /** Thick enough to be taken from the bed; common practice, no source. */
    public static final double USUAL_ROD_MM = 4;

    /** What is printed of the dome. */
    public enum Shape {
        /** The space under the dome. */
        BODY,
        /** The dome's skin, open below. */
        SHELL,
        /** Its struts and hubs. */
        FRAME
    }

    /**
     * A solid body in one piece.
     *
     * @param scale how many times smaller it is
     * @return the model
     */
    public static PrintSpec body(double scale) {
        return new PrintSpec(scale, Shape.BODY, USUAL_WALL_MM, USUAL_ROD_MM, Optional.empty());
    }
}
