package dev.calotte.geometry;

/**
 * The cut where two boards of equal thickness meet at a corner, each tilted about its edge in the plane of the corner.
 * Saw and gauge are set from a square cut, with the board lying on its wide outer face. The cut lies in the plane that
 * halves the angle between the two outer faces.
 *
 * <p>With tilts b1, b2 and corner angle A: cos 2t = sin b1 sin b2 - cos b1 cos b2 cos A for the blade tilt t, and
 * tan m1 = (sin b1 cos A + cos b1 tan b2) / sin A for the gauge on the first board. With equal tilts these are the
 * formulas for boxes with sloping sides (Snyder and Gottesman, "Compound-Angle Joinery"); derived here for unequal ones.
 *
 * @param bladeTiltRad how far the blade is tilted, the same on both boards
 * @param gauge1Rad how far the mitre gauge is turned for the first board; above 0 the lower edge is the shorter
 * @param gauge2Rad the same for the second
 */
public record CompoundCut(double bladeTiltRad, double gauge1Rad, double gauge2Rad) {

    /**
     * Computes the cut of a corner.
     *
     * @param cornerAngleRad the angle between the two edges, above 0 and below π
     * @param tilt1Rad how far the first board's outer face leans in below its edge, between -π/2 and π/2, 0 upright
     * @param tilt2Rad the same of the second
     * @return the settings of the saw
     * @throws IllegalArgumentException if an angle is out of its range
     */
    public static CompoundCut of(double cornerAngleRad, double tilt1Rad, double tilt2Rad) {
        if (!(cornerAngleRad > 0 && cornerAngleRad < Math.PI)) {
            throw new IllegalArgumentException("no corner has an angle of " + cornerAngleRad);
        }
        if (!(Math.abs(tilt1Rad) < Math.PI / 2 && Math.abs(tilt2Rad) < Math.PI / 2)) {
            throw new IllegalArgumentException("no board is tilted by " + tilt1Rad + " and " + tilt2Rad);
        }
        double cosine = StrictMath.sin(tilt1Rad) * StrictMath.sin(tilt2Rad)
                - StrictMath.cos(tilt1Rad) * StrictMath.cos(tilt2Rad) * StrictMath.cos(cornerAngleRad);
        return new CompoundCut(
                StrictMath.acos(Math.max(-1, Math.min(1, cosine))) / 2,
                gaugeRad(cornerAngleRad, tilt1Rad, tilt2Rad),
                gaugeRad(cornerAngleRad, tilt2Rad, tilt1Rad));
    }

    private static double gaugeRad(double corner, double own, double other) {
        return StrictMath.atan2(
                StrictMath.sin(own) * StrictMath.cos(corner) + StrictMath.cos(own) * StrictMath.tan(other),
                StrictMath.sin(corner));
    }
}
