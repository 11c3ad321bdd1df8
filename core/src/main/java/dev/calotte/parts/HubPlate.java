package dev.calotte.parts;

/**
 * A round plate at every hub, to which its struts are bolted.
 *
 * @param diameterMm across the disc
 * @param holeMm the diameter of its holes, one for each strut
 * @param holeCircleMm the diameter of the circle on which the holes' centres stand
 * @param slotMm how wide the slots between its arms are
 */
public record HubPlate(double diameterMm, double holeMm, double holeCircleMm, double slotMm) {

    /** How wide slots are where nothing else is said: a cutter's or a beam's width and some play. */
    public static final double USUAL_SLOT_MM = 2;

    /**
     * Checks each length by itself; whether they go together, {@link Joinery#problems()} says.
     *
     * @param diameterMm across the disc
     * @param holeMm the diameter of its holes
     * @param holeCircleMm the diameter of the circle of holes
     * @param slotMm how wide the slots are
     * @throws IllegalArgumentException if one is not finite and above 0
     */
    public HubPlate {
        Joinery.checkAbove0("diameter", diameterMm);
        Joinery.checkAbove0("hole", holeMm);
        Joinery.checkAbove0("hole circle", holeCircleMm);
        Joinery.checkAbove0("slot", slotMm);
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
        return new HubPlate(diameterMm, holeMm, holeCircleMm, USUAL_SLOT_MM);
    }
}
