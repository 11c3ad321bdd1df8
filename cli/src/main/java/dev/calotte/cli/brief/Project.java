package dev.calotte.cli.brief;

import dev.calotte.assembly.AssemblySpec;
import dev.calotte.dome.DomeSpec;
import dev.calotte.export.Finish;
import dev.calotte.model.ModelSpec;
import dev.calotte.parts.Joinery;
import dev.calotte.solid.JigSpec;
import dev.calotte.solid.PrintSpec;
import dev.calotte.stock.Bar;
import dev.calotte.units.UnitSystem;
import java.util.List;
import java.util.Optional;

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
 * @param print how the solid model is printed
 * @param model what is cut for a model, if the brief says of what
 * @param jigs what jigs are made for, if they are wanted
 * @param kerfMm how wide a cut is, by half of which cut lines are moved; 0 if they are not
 * @param spareShare how much more of everything is bought than is needed, as a part of it
 * @param assembly how the dome is put together
 * @param finish how files are finished for the machines at hand
 * @param files the families of files to write, each at most once, in the order of {@link Section}
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
        PrintSpec print,
        Optional<ModelSpec> model,
        Optional<JigSpec> jigs,
        double kerfMm,
        double spareShare,
        AssemblySpec assembly,
        Finish finish,
        List<Section> files) {

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
     * @param print how the solid model is printed
     * @param model what is cut for a model
     * @param jigs what jigs are made for
     * @param kerfMm how wide a cut is
     * @param spareShare how much more is bought than is needed
     * @param assembly how the dome is put together
     * @param finish how files are finished
     * @param files the families of files to write
     */
    public Project {
        bars = List.copyOf(bars);
        covers = List.copyOf(covers);
        openings = List.copyOf(openings);
        files = List.copyOf(files);
    }

    /**
     * Whether a family of files is to be written.
     *
     * @param section the family
     * @return whether the brief asks for it
     */
    public boolean wants(Section section) {
        return files.contains(section);
    }
}
