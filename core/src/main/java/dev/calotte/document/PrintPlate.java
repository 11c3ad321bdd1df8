package dev.calotte.document;

import java.util.List;

/**
 * All that is printed to help with building.
 *
 * @param name where the file belongs that holds all of it
 * @param title what it shows
 * @param clearanceMm what is left free on either side of a strut
 * @param wallMm how thick walls are
 * @param jigs what is printed, each mark once
 */
public record PrintPlate(String name, String title, double clearanceMm, double wallMm, List<Jig> jigs)
        implements Document {

    /**
     * Copies the list.
     *
     * @param name where the file belongs
     * @param title what it shows
     * @param clearanceMm what is left free
     * @param wallMm how thick walls are
     * @param jigs what is printed
     */
    public PrintPlate {
        jigs = List.copyOf(jigs);
    }
}
