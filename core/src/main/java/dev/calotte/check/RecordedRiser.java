package dev.calotte.check;

import java.util.List;

/**
 * What a record says of the wall under the base ring, in millimetres.
 *
 * @param height from the ground to the lowest base hub
 * @param totalHeight from the ground to the highest hub
 * @param baysLeftOut how many bays have no wall
 * @param walls the kinds of bays
 * @param uprights the kinds of uprights
 * @param aboveLowest for each hub of the base ring how much higher it stands than the lowest
 */
public record RecordedRiser(
        double height,
        double totalHeight,
        int baysLeftOut,
        List<Wall> walls,
        List<Upright> uprights,
        List<Double> aboveLowest) {

    /**
     * Copies the lists.
     *
     * @param height from the ground to the lowest base hub
     * @param totalHeight from the ground to the highest hub
     * @param baysLeftOut how many bays have no wall
     * @param walls the kinds of bays
     * @param uprights the kinds of uprights
     * @param aboveLowest how much higher each base hub stands than the lowest
     */
    public RecordedRiser {
        walls = List.copyOf(walls);
        uprights = List.copyOf(uprights);
        aboveLowest = List.copyOf(aboveLowest);
    }

    /**
     * A kind of bays.
     *
     * @param mark its mark
     * @param hand left, right or none
     * @param count how many there are
     * @param width along the ground
     * @param left its left side seen from outside
     * @param right its right side
     * @param top its upper side
     */
    public record Wall(String mark, String hand, int count, double width, double left, double right, double top) {}

    /**
     * A kind of uprights.
     *
     * @param mark its mark
     * @param count how many there are
     * @param length how long they are
     */
    public record Upright(String mark, int count, double length) {}
}
