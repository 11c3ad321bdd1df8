package dev.calotte.parts;

/**
 * How struts meet hubs.
 *
 * @param hubGapMm from the hub's centre to the cut end of a strut, 0 or more
 */
public record Joinery(double hubGapMm) {

    /**
     * Checks the gap.
     *
     * @param hubGapMm from the hub's centre to the cut end of a strut
     * @throws IllegalArgumentException if it is negative or not finite
     */
    public Joinery {
        if (!(hubGapMm >= 0 && Double.isFinite(hubGapMm))) {
            throw new IllegalArgumentException("no hub gap is " + hubGapMm + " mm");
        }
    }

    /**
     * Struts that reach from node to node.
     *
     * @return a joinery without gaps
     */
    public static Joinery nodeToNode() {
        return new Joinery(0);
    }
}
