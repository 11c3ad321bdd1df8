package dev.calotte.parts;

import dev.calotte.geometry.CompoundCut;

/**
 * Where a rail meets the next one at a corner of its panel.
 *
 * <p>With the corner at the origin, the rail's edge along x, the panel on the side of y and outside upwards along z, the
 * outer face leans in by the tilt, so that the width runs along (0, cos, sin) and the depth along (0, sin, -cos). The
 * other rail's width runs along w' = (sin A cos b', -cos A cos b', sin b'). A point of the cut is as far from the one
 * outer face as from the other, which gives its x; computed by hand here.
 *
 * @param angleRad the angle of the corner
 * @param tiltRad of this rail
 * @param otherTiltRad of the other
 */
record RailCorner(double angleRad, double tiltRad, double otherTiltRad) {

    /** How far the cut lies from the corner, along the rail, at so much of its width and depth. */
    double insetMm(double widthMm, double depthMm) {
        double y = widthMm * StrictMath.cos(tiltRad) + depthMm * StrictMath.sin(tiltRad);
        double z = widthMm * StrictMath.sin(tiltRad) - depthMm * StrictMath.cos(tiltRad);
        double otherCosine = StrictMath.cos(otherTiltRad);
        double alongY = StrictMath.cos(tiltRad) + StrictMath.cos(angleRad) * otherCosine;
        double alongZ = StrictMath.sin(tiltRad) - StrictMath.sin(otherTiltRad);
        return (alongY * y + alongZ * z) / (StrictMath.sin(angleRad) * otherCosine);
    }

    RailKind.End end() {
        CompoundCut cut = CompoundCut.of(angleRad, tiltRad, otherTiltRad);
        return new RailKind.End(cut.bladeTiltRad(), cut.gauge1Rad());
    }
}
