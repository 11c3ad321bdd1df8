package dev.calotte.cli;

import dev.calotte.assembly.Accuracy;
import dev.calotte.bill.Bill;
import dev.calotte.bill.Needs;
import dev.calotte.caution.Caution;
import dev.calotte.caution.Cautions;
import dev.calotte.caution.Circumstances;
import dev.calotte.caution.Circumstances.Clad;
import dev.calotte.choose.BarNeeds;
import dev.calotte.choose.Resizing;
import dev.calotte.choose.StockCurve;
import dev.calotte.cli.brief.Project;
import dev.calotte.cli.brief.SizeWish;
import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Size;
import dev.calotte.drawing.Subject;
import dev.calotte.model.ModelNotes;
import dev.calotte.nest.BarPlan;
import dev.calotte.parts.JoineryNotes;
import dev.calotte.parts.Parts;
import dev.calotte.parts.RiserWall;
import dev.calotte.solid.Jigs;
import dev.calotte.sphere.Fitting;
import dev.calotte.sphere.Spacing;
import dev.calotte.units.UnitSystem;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A brief and all that was computed from it.
 *
 * @param project what was asked for
 * @param dome its geometry
 * @param parts its kinds
 * @param riser the wall under its base ring, if there is one
 * @param bars how its struts are cut from bars, if the brief names them
 * @param barCurve what its struts take of the bars in sizes nearby, if they can be tried quickly
 * @param covers its covers, how they are cut and how that fits their stock
 * @param found its size, and what decided it
 * @param bill what it takes, with spares
 * @param cautions what to mind
 */
public record Design(
        Project project,
        Dome dome,
        Parts parts,
        Optional<RiserWall> riser,
        Optional<BarPlan> bars,
        Optional<StockCurve> barCurve,
        List<CoverDesign> covers,
        FoundSize found,
        Bill bill,
        List<Caution> cautions) {

    /**
     * Copies the lists.
     *
     * @param project what was asked for
     * @param dome its geometry
     * @param parts its kinds
     * @param riser the wall under its base ring, if there is one
     * @param bars how its struts are cut
     * @param barCurve what its struts take in sizes nearby
     * @param covers its covers
     * @param found its size, and what decided it
     * @param bill what it takes
     * @param cautions what to mind
     */
    public Design {
        covers = List.copyOf(covers);
        cautions = List.copyOf(cautions);
    }

    /**
     * What drawings and books are about.
     *
     * @return the dome, what it is called, and how lengths are written
     */
    public Subject subject() {
        return new Subject(
                project().title(),
                parts(),
                project().units(),
                project().riserMm(),
                project().assembly());
    }

    /**
     * What the reader should know about how the brief was understood and what came of it.
     *
     * @return sentences, possibly none
     */
    public List<String> notes() {
        return Stream.of(
                        fittingNote(),
                        dome.notes(),
                        parts.notes(),
                        riser.map(RiserWall::notes).orElse(List.of()),
                        JoineryNotes.of(parts, project.units()),
                        project.extras()
                                .jigs()
                                .map(jigs -> Jigs.notes(parts, jigs))
                                .orElse(List.of()),
                        modelNotes())
                .flatMap(List::stream)
                .toList();
    }

    /**
     * What errors in the length of struts do to the dome.
     *
     * @return the figures for the workshop's tolerance
     */
    public Accuracy accuracy() {
        return Accuracy.of(parts, parts.joinery().cutToleranceMm());
    }

    private List<String> modelNotes() {
        return project.extras()
                .model()
                .map(model -> ModelNotes.of(parts, model))
                .orElse(List.of());
    }

    private List<String> fittingNote() {
        DomeSpec spec = project.dome();
        boolean idle = spec.spacing() != Spacing.FITTED && !spec.fitting().equals(Fitting.DEFAULT);
        return idle ? List.of("strut-ratio and fit have an effect with spacing: fitted only.") : List.of();
    }

    /**
     * Computes what a brief asks for.
     *
     * @param project what is asked for
     * @param steps how much work is spent on laying its covers, see {@link dev.calotte.nest.Layout}
     * @return the design
     */
    static Design of(Project project, int steps) {
        FoundSize found = FoundSize.of(project);
        Parts parts = new SizedParts(project).apply(found.size());
        // a way of patches that cannot be is refused before anything else is made
        project.assembly().way().ifPresent(way -> project.assembly().patches(parts));
        Dome dome = parts.dome();
        Optional<RiserWall> riser =
                project.riserMm() > 0 ? Optional.of(RiserWall.of(dome, project.riserMm())) : Optional.empty();
        Resizing resizing = resizing(project, found.size());
        List<CoverDesign> covers = new CoverDesigns(project, parts, steps).of(found.widestFrom(), resizing);
        PrintCheck.check(project, parts, covers);
        Optional<BarPlan> bars =
                project.bars().isEmpty() ? Optional.empty() : Optional.of(BarNeeds.plan(parts, project.bars()));
        Optional<StockCurve> barCurve = bars.flatMap(plan -> StockCurve.ofBars(plan, project.bars(), resizing));
        Bill bill = Bill.of(needs(project, parts, riser, bars, covers));
        return new Design(project, dome, parts, riser, bars, barCurve, covers, found, bill, cautions(project, parts));
    }

    private static List<Caution> cautions(Project project, Parts parts) {
        List<Clad> covers = project.covers().stream()
                .map(covering -> new Clad(covering.cover(), covering.material()))
                .toList();
        return Cautions.of(new Circumstances(
                parts,
                covers,
                project.assembly().raise(),
                project.extras().jigs().isPresent(),
                project.extras().model().isPresent()));
    }

    /**
     * What is counted and weighed.
     *
     * @return all that the dome is made of
     */
    public Needs needs() {
        return needs(project, parts, riser, bars, covers);
    }

    private static Needs needs(
            Project project, Parts parts, Optional<RiserWall> riser, Optional<BarPlan> bars, List<CoverDesign> covers) {
        return new Needs(
                parts,
                riser,
                bars,
                covers.stream().map(CoverDesign::fit).toList(),
                covers.stream().map(CoverDesign::plan).flatMap(Optional::stream).toList(),
                project.spareShare());
    }

    /** Sizes that the page can print; larger ones where the size is not the largest that can be already. */
    private static Resizing resizing(Project project, Size size) {
        boolean widest = project.size() instanceof SizeWish.WidestFor || project.size() instanceof SizeWish.WidestFrom;
        UnitSystem units = project.units();
        double unit = size.measure() == Size.Measure.FLOOR_AREA ? units.leastAreaMm2() : units.leastLengthMm();
        return new Resizing(new SizedParts(project), size, unit, !widest);
    }
}
