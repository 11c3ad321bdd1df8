package dev.calotte.output;

import dev.calotte.assembly.AssemblySpec;
import dev.calotte.book.Matter;
import dev.calotte.choose.CoverFit;
import dev.calotte.choose.CoverPlan;
import dev.calotte.model.ModelSpec;
import dev.calotte.parts.Parts;
import dev.calotte.solid.JigSpec;
import dev.calotte.solid.PrintSpec;
import dev.calotte.units.UnitSystem;
import java.util.List;
import java.util.Optional;

/**
 * What documents are about.
 *
 * @param title what to call the dome
 * @param parts the parts of the dome
 * @param covers its covers; with none, the patterns are the net panels
 * @param plans how the covers are laid on their stock, as far as they are
 * @param units how lengths are written for people
 * @param riserMm how high a wall stands under the lowest base hub, 0 without one
 * @param print how the solid model is printed
 * @param model what is drawn of a model to cut, if anything
 * @param jigs what jigs are made for, if they are wanted
 * @param kerfMm how wide a cut is, if cut lines are to be moved for that; 0 if not
 * @param book what the build book is made from, if it is wanted
 * @param assembly how the dome is put together
 */
public record Contents(
        String title,
        Parts parts,
        List<CoverFit> covers,
        List<CoverPlan> plans,
        UnitSystem units,
        double riserMm,
        PrintSpec print,
        Optional<ModelSpec> model,
        Optional<JigSpec> jigs,
        double kerfMm,
        Optional<Matter> book,
        AssemblySpec assembly) {

    /**
     * Copies the lists.
     *
     * @param title what to call the dome
     * @param parts the parts of the dome
     * @param covers its covers
     * @param plans how the covers are laid
     * @param units how lengths are written for people
     * @param riserMm how high a wall stands under the lowest base hub
     * @param print how the solid model is printed
     * @param model what is drawn of a model to cut
     * @param jigs what jigs are made for
     * @param kerfMm how wide a cut is
     * @param book what the build book is made from
     * @param assembly how the dome is put together
     */
    public Contents {
        covers = List.copyOf(covers);
        plans = List.copyOf(plans);
    }
}
