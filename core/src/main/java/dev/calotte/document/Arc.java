package dev.calotte.document;

/**
 * A part of a circle.
 *
 * @param xMm its centre
 * @param yMm its centre
 * @param radiusMm its radius, above 0
 * @param startRad where it begins, seen from the centre, counter-clockwise from x
 * @param sweepRad how far it runs from there, counter-clockwise, or clockwise below 0; less than a full turn
 */
public record Arc(double xMm, double yMm, double radiusMm, double startRad, double sweepRad) {

    /**
     * The arc from one end of a chord to the other. Half of the sweep's half turns the chord into the line to the middle
     * of the arc; radius and centre follow by the identities of the double angle.
     */
    static Arc over(double fromX, double fromY, double toX, double toY, double bulge) {
        double across = toX - fromX;
        double upwards = toY - fromY;
        double aside = (1 - bulge * bulge) / (4 * bulge);
        double x = (fromX + toX) / 2 - aside * upwards;
        double y = (fromY + toY) / 2 + aside * across;
        double chord = Math.sqrt(across * across + upwards * upwards);
        return new Arc(
                x,
                y,
                chord * (1 + bulge * bulge) / (4 * Math.abs(bulge)),
                StrictMath.atan2(fromY - y, fromX - x),
                4 * StrictMath.atan(bulge));
    }

    /**
     * Whether it passes through a direction from its centre.
     *
     * @param angleRad counter-clockwise from x
     * @return whether a point of it lies there
     */
    public boolean passes(double angleRad) {
        double turn = 2 * Math.PI;
        double turned = Math.signum(sweepRad) * (angleRad - startRad);
        return turned - turn * Math.floor(turned / turn) <= Math.abs(sweepRad);
    }

    /**
     * A point of its circle.
     *
     * @param angleRad counter-clockwise from x
     * @return its x in millimetres
     */
    public double x(double angleRad) {
        return xMm + radiusMm * StrictMath.cos(angleRad);
    }

    /**
     * A point of its circle.
     *
     * @param angleRad counter-clockwise from x
     * @return its y in millimetres
     */
    public double y(double angleRad) {
        return yMm + radiusMm * StrictMath.sin(angleRad);
    }
}
