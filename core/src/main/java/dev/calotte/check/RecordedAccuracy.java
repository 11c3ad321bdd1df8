package dev.calotte.check;

import java.util.List;

/**
 * What a record says that errors in the length of struts do.
 *
 * @param tolerance how wrong struts are, in millimetres
 * @param dimples what it does at a hub, for each kind of struts
 * @param baseRadius what it does to the radius of the base ring; not a number for a whole sphere
 */
public record RecordedAccuracy(double tolerance, List<Dimple> dimples, double baseRadius) {

    /**
     * Copies the list.
     *
     * @param tolerance how wrong struts are
     * @param dimples what it does at a hub
     * @param baseRadius what it does to the base ring
     */
    public RecordedAccuracy {
        dimples = List.copyOf(dimples);
    }

    /**
     * How far a hub stands out or in.
     *
     * @param mark the mark of the kind of struts
     * @param factor how many times the error
     * @param height in millimetres
     */
    public record Dimple(String mark, double factor, double height) {}
}
