package dev.calotte.cli;

import dev.calotte.assembly.Patch;
import dev.calotte.choose.BatchedCover;
import dev.calotte.choose.CoverFit;
import dev.calotte.choose.CoverPlan;
import dev.calotte.choose.Mends;
import dev.calotte.choose.Resizing;
import dev.calotte.choose.SeamSaving;
import dev.calotte.choose.StockCurve;
import dev.calotte.choose.WidestFrom;
import dev.calotte.cli.brief.Covering;
import dev.calotte.cli.brief.Project;
import dev.calotte.cli.brief.SizeWish;
import dev.calotte.dome.Panel;
import dev.calotte.nest.Layout;
import dev.calotte.output.Documents;
import dev.calotte.parts.Parts;
import dev.calotte.pattern.Patterns;
import dev.calotte.pattern.Splitting;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The covers of a project, cut and laid.
 *
 * @param project what is asked for
 * @param parts the parts of its dome
 * @param steps how much work is spent on laying pieces
 */
record CoverDesigns(Project project, Parts parts, int steps) {

    /** For searches that give the same for any number. */
    static final int THREADS = 2;

    /**
     * All covers, the first named first.
     *
     * @param from the plan that the size was found with, if the supply of a stock decides it
     * @param resizing sizes nearby
     */
    List<CoverDesign> of(Optional<WidestFrom> from, Resizing resizing) {
        CoverPlaces places = new CoverPlaces(project);
        return IntStream.range(0, project.covers().size())
                .mapToObj(place -> places.at(place, covering -> design(covering, from, resizing)))
                .toList();
    }

    private CoverDesign design(Covering covering, Optional<WidestFrom> from, Resizing resizing) {
        CoverFit fit = CoverFit.of(Patterns.of(parts, covering.cover()), covering.stocks());
        Laid laid = laid(fit, covering, from);
        List<List<Panel>> patches = laid.plan().isPresent() ? patches(covering) : List.of();
        Layout layout = layout(covering, steps);
        Optional<BatchedCover> batched =
                laid.plan().filter(plan -> covering.byPatches()).map(plan -> BatchedCover.of(plan, patches, layout));
        Optional<StockCurve> curve = laid.plan()
                .filter(plan -> !covering.byPatches())
                .flatMap(plan -> StockCurve.ofCover(plan, resizing, layout));
        Optional<CoverPlan> last =
                batched.map(BatchedCover::plan).or(() -> laid.plan().map(plan -> handedOut(plan, patches)));
        return new CoverDesign(
                last.map(CoverPlan::fit).orElse(fit), mends(fit, covering), last, laid.saving(), curve, batched);
    }

    private Optional<Mends> mends(CoverFit fit, Covering covering) {
        return fit.misfits().isEmpty()
                ? Optional.empty()
                : Optional.of(Mends.of(parts.dome().spec(), parts.joinery(), covering.cover(), covering.stocks()));
    }

    /** A cover on its stock, in any order, and the seams that it has because they save stock. */
    private record Laid(Optional<CoverPlan> plan, Optional<SeamSaving> saving) {}

    private Laid laid(CoverFit fit, Covering covering, Optional<WidestFrom> from) {
        Layout layout = layout(covering, steps);
        Optional<SeamSaving> saving = covering.cover().treatment().split() == Splitting.WHEN_IT_SAVES
                ? SeamSaving.of(fit, layout)
                : Optional.empty();
        Optional<CoverPlan> plan = saving.map(SeamSaving::plan).or(() -> CoverPlan.of(fit, layout));
        if (from.isPresent() && isOutOfSupply(covering, plan)) {
            // other work may miss the plan that the size was found with
            Layout first = layout(covering, from.get().steps());
            return new Laid(CoverPlan.of(fit, first), Optional.empty());
        }
        return new Laid(plan, saving);
    }

    /** Whether a cover decides the size by its supply, and has no plan that the supply is enough for. */
    private boolean isOutOfSupply(Covering covering, Optional<CoverPlan> plan) {
        return project.size() instanceof SizeWish.WidestFrom wish
                && wish.cover().equals(covering.cover().name())
                && plan.filter(p -> wish.supply().holds(wish.supply().usedBy(p.plan())))
                        .isEmpty();
    }

    /** The panels patch by patch; none of a dome so large that nobody sorts its pieces, unless that was asked for. */
    private List<List<Panel>> patches(Covering covering) {
        return covering.byPatches() || parts.dome().panels().size() <= Documents.MOST_PANELS_IN_A_PICTURE
                ? project.assembly().patches(parts).patches().stream()
                        .map(Patch::panels)
                        .toList()
                : List.of();
    }

    private static CoverPlan handedOut(CoverPlan plan, List<List<Panel>> patches) {
        return patches.isEmpty()
                ? plan
                : plan.handedOut(patches.stream().flatMap(List::stream).toList());
    }

    private static Layout layout(Covering covering, int steps) {
        return new Layout(covering.spacingMm(), steps, THREADS);
    }
}
