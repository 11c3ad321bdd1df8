package dev.calotte.compare;

import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Size;

/**
 * A dome that could stand in another's place, not yet sized.
 *
 * @param shape the dome at a radius of {@link #UNIT_MM}
 * @param steps in how many steps it differs from the own dome, see {@link Candidates}
 * @param own whether it is the own dome
 */
public record Candidate(DomeSpec shape, int steps, boolean own) {

    /** The radius of the shape, in millimetres. */
    public static final double UNIT_MM = 1000;

    /** The same part of the sphere at a radius: a height above which panels stay grows with it. */
    DomeSpec at(double radiusMm) {
        DomeSpec sized = shape.withSize(Size.radius(radiusMm));
        return levelMm() == 0 ? sized : sized.withKeep(new Keep.AboveHeight(levelMm() / UNIT_MM * radiusMm));
    }

    /** The height above which panels stay, 0 where it does not depend on the radius. */
    double levelMm() {
        return shape.keep() instanceof Keep.AboveHeight above ? above.heightMm() : 0;
    }
}
