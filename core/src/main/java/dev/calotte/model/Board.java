package dev.calotte.model;

import java.util.OptionalDouble;

/**
 * The board that a slotted kit is cut from, as it is measured: nothing of it is scaled.
 *
 * @param lengthMm one side of a sheet
 * @param widthMm the other
 * @param thicknessMm its true thickness
 * @param kerfMm how wide the cutter cuts, in board and card alike
 * @param fitMm how much wider than the board slots come out; 0 for press fit, below 0 for soft board
 * @param discMm the diameter of the discs; as small as the slots allow if absent
 */
public record Board(
        double lengthMm, double widthMm, double thicknessMm, double kerfMm, double fitMm, OptionalDouble discMm) {

    /** What slides without falling out in plywood and fibreboard; common practice, no source. */
    public static final double SLIP_FIT_MM = 0.1;

    /**
     * Checks the numbers.
     *
     * @param lengthMm above 0
     * @param widthMm above 0
     * @param thicknessMm above 0
     * @param kerfMm 0 or more, below the thickness
     * @param fitMm of either sign, smaller than the thickness less the kerf
     * @param discMm above 0
     * @throws IllegalArgumentException if a number is not so, or not finite
     */
    public Board {
        if (!(Math.min(lengthMm, widthMm) > 0
                && thicknessMm > 0
                && Double.isFinite(lengthMm + widthMm + thicknessMm))) {
            throw new IllegalArgumentException(
                    "no board measures " + lengthMm + " by " + widthMm + " by " + thicknessMm + " mm");
        }
        if (!(kerfMm >= 0 && Math.abs(fitMm) < thicknessMm - kerfMm)) {
            throw new IllegalArgumentException(
                    "a kerf of " + kerfMm + " mm leaves no slot for a board of " + thicknessMm + " mm, fit " + fitMm);
        }
        if (!(discMm.orElse(1) > 0 && discMm.orElse(1) < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("no disc is " + discMm + " mm wide");
        }
    }

    /**
     * A board with slip fit and discs as small as may be.
     *
     * @param lengthMm one side of a sheet
     * @param widthMm the other
     * @param thicknessMm its true thickness
     * @param kerfMm how wide the cutter cuts
     * @return the board
     */
    public static Board of(double lengthMm, double widthMm, double thicknessMm, double kerfMm) {
        return new Board(lengthMm, widthMm, thicknessMm, kerfMm, SLIP_FIT_MM, OptionalDouble.empty());
    }

    /** How wide slots and notches come out. */
    double slotMm() {
        return thicknessMm + fitMm;
    }

    /**
     * How far cuts stay from each other and from the edge of a sheet: what the cutter takes, and a web.
     *
     * @return millimetres
     */
    public double spacingMm() {
        return kerfMm + Math.max(1.5, thicknessMm / 2);
    }
}
