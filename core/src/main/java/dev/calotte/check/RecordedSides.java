package dev.calotte.check;

import java.util.List;
import java.util.Map;

/**
 * What a record says of the sides of patterns, and of the grain of their pieces.
 *
 * @param sides for each piece the sides of its pattern, by the mark of the piece
 * @param grains for pieces to which it matters the direction from x that lies along the stock, in degrees
 */
public record RecordedSides(Map<String, List<Side>> sides, Map<String, Double> grains) {

    /**
     * Copies the maps.
     *
     * @param sides for each piece the sides of its pattern
     * @param grains the directions along the stock
     */
    public RecordedSides {
        sides = Map.copyOf(sides);
        grains = Map.copyOf(grains);
    }

    /**
     * A side of a pattern.
     *
     * @param strut the mark of the kind of struts below it
     * @param length from hub to hub, in millimetres
     * @param dihedral between the panel and its neighbour, in degrees; not a number where nothing depends on it
     * @param bevel how far the edge leans from square, in degrees
     * @param growth how far the net side lies outside the line of the hubs
     */
    public record Side(String strut, double length, double dihedral, double bevel, double growth) {}
}
