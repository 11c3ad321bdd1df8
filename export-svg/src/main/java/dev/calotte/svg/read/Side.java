package dev.calotte.svg.read;

/**
 * A side of a line, in millimetres, y upwards.
 *
 * @param fromX where it begins
 * @param fromY where it begins
 * @param toX where it ends
 * @param toY where it ends
 * @param radiusMm 0 if it is straight
 * @param sweepRad how far it turns, counter-clockwise, or clockwise below 0
 */
record Side(double fromX, double fromY, double toX, double toY, double radiusMm, double sweepRad) {

    static Side of(double fromX, double fromY, double toX, double toY, Track.Bend bend, double unitMm) {
        double chord = length(toX - fromX, toY - fromY);
        if (bend.radius() == 0 || chord == 0) {
            return new Side(fromX, fromY, toX, toY, 0, 0);
        }
        double radius = Math.max(bend.radius() * unitMm, chord / 2);
        double less = 2 * StrictMath.asin(Math.min(1, chord / 2 / radius));
        double sweep = bend.large() ? 2 * Math.PI - less : less;
        // the page is turned over: what is clockwise there is clockwise here
        return new Side(fromX, fromY, toX, toY, radius, bend.clockwise() ? -sweep : sweep);
    }

    private static double length(double across, double upwards) {
        return Math.sqrt(across * across + upwards * upwards);
    }

    double chordMm() {
        return length(toX - fromX, toY - fromY);
    }

    /** As a path has it. */
    double bulge() {
        return StrictMath.tan(sweepRad / 4);
    }

    boolean isArc() {
        return sweepRad != 0;
    }

    boolean isHalfCircle(double apartMm) {
        return isArc() && 2 * radiusMm - chordMm() <= apartMm;
    }

    /** How far apart the middles of two circles are. */
    double centresApartMm(Side other) {
        return length(centreX() - other.centreX(), centreY() - other.centreY());
    }

    private double centreX() {
        return (fromX + toX) / 2 - aside() * (toY - fromY);
    }

    private double centreY() {
        return (fromY + toY) / 2 + aside() * (toX - fromX);
    }

    /** How far to the left of the middle of the chord the centre lies, in chords. */
    private double aside() {
        return 0.5 / StrictMath.tan(sweepRad / 2);
    }
}
