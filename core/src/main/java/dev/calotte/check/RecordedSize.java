package dev.calotte.check;

import java.util.List;

/**
 * What a record says of the size of the whole, besides the radius, the height and the area of all panels.
 *
 * @param floorDiameter twice the largest distance of a base hub from the axis, in millimetres
 * @param floorArea of the base ring seen from above, in square metres
 * @param volume down to the level of the lowest hub, in cubic metres
 * @param baseSpread from the lowest base hub to the highest, in millimetres
 * @param baseRing the vertices of the base hubs, counter-clockwise seen from above
 * @param breakdown the two numbers of the breakdown
 * @param frequency their sum
 * @param triangulation how many panels came of one face of the solid
 * @param levelHeight where a level base stands over the centre, in millimetres; not a number if it is left as it is
 */
public record RecordedSize(
        double floorDiameter,
        double floorArea,
        double volume,
        double baseSpread,
        List<Integer> baseRing,
        List<Integer> breakdown,
        int frequency,
        long triangulation,
        double levelHeight) {

    /**
     * Copies the lists.
     *
     * @param floorDiameter twice the largest distance of a base hub from the axis
     * @param floorArea of the base ring seen from above
     * @param volume down to the level of the lowest hub
     * @param baseSpread from the lowest base hub to the highest
     * @param baseRing the vertices of the base hubs
     * @param breakdown the two numbers of the breakdown
     * @param frequency their sum
     * @param triangulation how many panels came of one face of the solid
     * @param levelHeight where a level base stands
     */
    public RecordedSize {
        baseRing = List.copyOf(baseRing);
        breakdown = List.copyOf(breakdown);
    }
}
