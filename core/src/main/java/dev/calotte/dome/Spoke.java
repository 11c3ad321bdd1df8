package dev.calotte.dome;

import java.util.OptionalDouble;

/**
 * A strut as it leaves a hub, and what lies between it and the next one counter-clockwise.
 *
 * @param strut the index of the strut
 * @param gapRad the angle to the next strut on the plane that touches the sphere at the hub; absent before the open
 *     side of a base hub
 * @param panel the index of the panel between them, or {@link #NONE} where none is or an opening took it
 * @param opposite the index of that panel's strut opposite the hub, or {@link #NONE}
 */
public record Spoke(int strut, OptionalDouble gapRad, int panel, int opposite) {

    /** No panel, no strut. */
    public static final int NONE = -1;
}
