package dev.calotte.drawing;

import dev.calotte.assembly.AssemblySpec;
import dev.calotte.assembly.PieceMarks;
import dev.calotte.dome.Dome;
import dev.calotte.parts.Parts;
import dev.calotte.units.UnitSystem;

/**
 * What the drawings of a dome are about.
 *
 * @param title what to call the dome
 * @param parts its parts
 * @param units how lengths are written
 * @param riserMm how high a wall stands under its lowest base hub, 0 without one
 * @param assembly how it is put together
 */
public record Subject(String title, Parts parts, UnitSystem units, double riserMm, AssemblySpec assembly) {

    /**
     * Drawings of a dome that is put together as usual.
     *
     * @param title what to call the dome
     * @param parts its parts
     * @param units how lengths are written
     * @param riserMm how high a wall stands under its lowest base hub, 0 without one
     */
    public Subject(String title, Parts parts, UnitSystem units, double riserMm) {
        this(title, parts, units, riserMm, AssemblySpec.USUAL);
    }

    Dome dome() {
        return parts.dome();
    }

    PieceMarks marks() {
        return new PieceMarks(parts);
    }

    /** What the frame of a drawing says about its lengths. */
    String unitsInWords() {
        return units == UnitSystem.METRIC ? "millimetres" : "feet and inches";
    }
}
