package dev.calotte.pattern;

/**
 * A mark on a side that must lie on the same mark of the neighbour.
 *
 * @param alongMm where it is on the side, counter-clockwise from the foot of the hub centre at the side's first corner,
 *     in millimetres: the same point in space for both neighbours
 * @param depthMm how deep it is cut into the allowance; 0 where there is none, then it is only drawn
 */
public record Notch(double alongMm, double depthMm) {}
