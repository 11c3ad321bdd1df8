package dev.calotte.cli.brief;

import dev.calotte.assembly.AssemblySpec;
import dev.calotte.dome.DomeSpec;
import dev.calotte.output.Extras;
import dev.calotte.parts.Joinery;
import dev.calotte.stock.Bar;
import dev.calotte.units.UnitSystem;
import java.util.List;

/**
 * What a brief asks for, checked.
 *
 * @param title the name of the project: one line, not empty
 * @param units how lengths are printed
 * @param dome the dome; its size is a stopgap where {@code size} has to be worked out
 * @param riserMm the height of a wall under its base ring, 0 for none
 * @param openings what is left out of it
 * @param joinery how its struts meet its hubs
 * @param bars what its struts are cut from; none if the brief does not say
 * @param size by what it wants to be sized
 * @param covers its covers, each with its stock
 * @param extras what models and jigs are made
 * @param spareShare how much more of everything is bought than is needed, as a part of it
 * @param assembly how the dome is put together
 * @param output which files are written, and how
 */
public record Project(
        String title,
        UnitSystem units,
        DomeSpec dome,
        double riserMm,
        List<OpeningRequest> openings,
        Joinery joinery,
        List<Bar> bars,
        SizeWish size,
        List<Covering> covers,
        Extras extras,
        double spareShare,
        AssemblySpec assembly,
        Output output) {

    /**
     * Copies the lists.
     *
     * @param title the name of the project
     * @param units how lengths are printed
     * @param dome the dome
     * @param riserMm the height of a wall under its base ring, 0 for none
     * @param openings what is left out of it
     * @param joinery how its struts meet its hubs
     * @param bars what its struts are cut from
     * @param size by what it wants to be sized
     * @param covers its covers
     * @param extras what models and jigs are made
     * @param spareShare how much more is bought than is needed
     * @param assembly how the dome is put together
     * @param output which files are written, and how
     */
    public Project {
        bars = List.copyOf(bars);
        covers = List.copyOf(covers);
        openings = List.copyOf(openings);
    }
}
