package dev.calotte.solid;

import dev.calotte.document.StrutSection;
import dev.calotte.parts.Ends;

/** A tube pressed flat: the middle line of its wall, half of it on either side. */
final class FlatTube {

    /** Where the wall is not known. */
    private static final double USUAL_WALL_MM = 1.25;

    private FlatTube() {}

    static double thickMm(Ends.Flattened ends) {
        return 2 * ends.wallMm().orElse(USUAL_WALL_MM);
    }

    static double widthMm(StrutSection tube, Ends.Flattened ends) {
        double wall = thickMm(ends) / 2;
        return Math.PI * (tube.widthMm() - wall) / 2 + wall;
    }
}
