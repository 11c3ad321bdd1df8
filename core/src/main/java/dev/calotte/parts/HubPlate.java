package dev.calotte.parts;

import java.util.Optional;

/**
 * A plate at every hub, to which its struts are bolted: a disc, or of someone's own shape.
 *
 * @param diameterMm across the disc; with plates of someone's own shape twice as far as the largest reaches
 * @param holeMm the diameter of its holes, one for each strut
 * @param holeCircleMm the diameter of the circle on which the holes' centres stand
 * @param slotMm how wide the slots between its arms are
 * @param cutterMm how wide the cutter is that has to get into its slots; 0 for a beam, which cuts sharp corners
 * @param blanks plates of someone's own shape in place of discs, if there are any
 */
public record HubPlate(
        double diameterMm,
        double holeMm,
        double holeCircleMm,
        double slotMm,
        double cutterMm,
        Optional<ByHub<PlateBlank>> blanks) {

    /** How wide slots are where nothing else is said: a cutter's or a beam's width and some play. */
    public static final double USUAL_SLOT_MM = 2;

    /** How much wider than their cutter slots are where nothing else is said. */
    private static final double PLAY_MM = 0.2;

    /**
     * Checks each length by itself; whether they go together, {@link Joinery#problems()} says.
     *
     * @param diameterMm across the disc
     * @param holeMm the diameter of its holes
     * @param holeCircleMm the diameter of the circle of holes
     * @param slotMm how wide the slots are
     * @param cutterMm how wide the cutter is
     * @param blanks plates of someone's own shape
     * @throws IllegalArgumentException if one is not finite and above 0, or the cutter below 0
     */
    public HubPlate {
        Joinery.checkAbove0("diameter", diameterMm);
        Joinery.checkAbove0("hole", holeMm);
        Joinery.checkAbove0("hole circle", holeCircleMm);
        Joinery.checkAbove0("slot", slotMm);
        if (cutterMm != 0) {
            Joinery.checkAbove0("cutter", cutterMm);
        }
    }

    /**
     * A plate with slots of the usual width.
     *
     * @param diameterMm across the disc
     * @param holeMm the diameter of its holes
     * @param holeCircleMm the diameter of the circle of holes
     * @return the plate
     */
    public static HubPlate of(double diameterMm, double holeMm, double holeCircleMm) {
        return new HubPlate(diameterMm, holeMm, holeCircleMm, USUAL_SLOT_MM, 0, Optional.empty());
    }

    /**
     * How wide slots are where nothing else is said.
     *
     * @param cutterMm how wide the cutter is, 0 for a beam
     * @return wide enough for the cutter, and {@link #USUAL_SLOT_MM} at least
     */
    public static double usualSlotMm(double cutterMm) {
        return cutterMm > 0 ? Math.max(USUAL_SLOT_MM, cutterMm + PLAY_MM) : USUAL_SLOT_MM;
    }

    /**
     * The same plate with other slots.
     *
     * @param otherMm how wide the slots are
     * @return a copy
     */
    public HubPlate withSlot(double otherMm) {
        return new HubPlate(diameterMm, holeMm, holeCircleMm, otherMm, cutterMm, blanks);
    }

    /**
     * The same plate for another cutter.
     *
     * @param otherMm how wide the cutter is, 0 for a beam
     * @return a copy
     */
    public HubPlate withCutter(double otherMm) {
        return new HubPlate(diameterMm, holeMm, holeCircleMm, slotMm, otherMm, blanks);
    }

    /**
     * The same holes and slots in plates of someone's own shape.
     *
     * @param others the plates
     * @return a copy
     */
    public HubPlate withBlanks(ByHub<PlateBlank> others) {
        double furthest =
                others.given().mapToDouble(PlateBlank::diameterMm).max().orElse(diameterMm);
        return new HubPlate(furthest, holeMm, holeCircleMm, slotMm, cutterMm, Optional.of(others));
    }
}
