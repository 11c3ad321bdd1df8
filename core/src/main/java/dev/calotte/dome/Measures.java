package dev.calotte.dome;

/**
 * The dome in numbers.
 *
 * @param radiusMm from the centre of the sphere to the hubs
 * @param floorDiameterMm twice the largest distance of a base hub from the axis; 0 for a whole sphere
 * @param heightMm from the lowest hub to the highest
 * @param floorAreaMm2 the area of the base ring seen from above; 0 for a whole sphere
 * @param surfaceAreaMm2 the area of all panels; what openings leave out is taken off here and nowhere else
 * @param volumeMm3 the space between the panels and the level of the lowest hub, the gap under higher base hubs closed
 *     by a vertical wall
 * @param baseSpreadMm how much higher the highest base hub stands than the lowest; 0 for a whole sphere
 */
public record Measures(
        double radiusMm,
        double floorDiameterMm,
        double heightMm,
        double floorAreaMm2,
        double surfaceAreaMm2,
        double volumeMm3,
        double baseSpreadMm) {

    /** The same without some of the panels' area. */
    Measures less(double areaMm2) {
        return new Measures(
                radiusMm, floorDiameterMm, heightMm, floorAreaMm2, surfaceAreaMm2 - areaMm2, volumeMm3, baseSpreadMm);
    }
}
