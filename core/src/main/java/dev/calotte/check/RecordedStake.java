package dev.calotte.check;

/**
 * What a record says of a base hub on the ground, in millimetres and degrees.
 *
 * @param mark the mark of the hub
 * @param fromAxis along the level
 * @param bearing counter-clockwise from the start ray seen from above
 * @param aboveLowest over the lowest base hub
 * @param levelChord to the next base hub, along the level
 * @param straightChord to the next base hub, from hub to hub
 */
public record RecordedStake(
        String mark, double fromAxis, double bearing, double aboveLowest, double levelChord, double straightChord) {}
