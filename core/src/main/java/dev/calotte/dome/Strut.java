package dev.calotte.dome;

import java.util.OptionalDouble;

/**
 * A straight piece between two hubs.
 *
 * @param index its place among the dome's struts: by row, then by place
 * @param from the hub with the lower index, never further from the crown than the other
 * @param to the other hub
 * @param row the row of the hub {@code to}
 * @param place its place in the row from 1, counter-clockwise from the start ray seen from above
 * @param lengthMm from node to node
 * @param axialAngleRad the angle between the strut and the plane that touches the sphere at its hub: half the angle
 *     that the strut spans at the centre. Some builders call the complement, strut to radius, by the same name
 * @param dihedralRad the angle between its two panels measured inside the dome, π where they lie flat and more where
 *     the edge is hollow; absent on the base ring and at openings
 */
public record Strut(
        int index,
        int from,
        int to,
        int row,
        int place,
        double lengthMm,
        double axialAngleRad,
        OptionalDouble dihedralRad) {}
