package dev.calotte.cli;

import dev.calotte.assembly.Patch;
import dev.calotte.choose.BatchedCover;
import dev.calotte.choose.CoverFit;
import dev.calotte.choose.CoverPlan;
import dev.calotte.choose.Mends;
import dev.calotte.choose.Resizing;
import dev.calotte.choose.SeamSaving;
import dev.calotte.choose.StockCurve;
import dev.calotte.choose.WidestFor;
import dev.calotte.choose.WidestFrom;
import dev.calotte.choose.WidestFrom.Question;
import dev.calotte.cli.brief.Covering;
import dev.calotte.cli.brief.Project;
import dev.calotte.cli.brief.SizeWish;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Panel;
import dev.calotte.nest.Layout;
import dev.calotte.output.Documents;
import dev.calotte.parts.Parts;
import dev.calotte.pattern.Patterns;
import dev.calotte.pattern.Splitting;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem;
import dev.calotte.problem.Problem.Code;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The covers of a project; a problem of a cover, which core knows by its name, is told by its place in the brief. */
final class CoverDesigns {

    private static final int THREADS = 2;

    private final Project project;

    private final Optional<WidestFrom> from;

    /** The covers of a project, one of which decided the size where the supply of its stock did. */
    CoverDesigns(Project project, Optional<WidestFrom> from) {
        this.project = project;
        this.from = from;
    }

    /** The covers, their plans improved for so many steps. */
    List<CoverDesign> of(Parts parts, Resizing resizing, int steps) {
        List<CoverDesign> designs = new ArrayList<>();
        for (int i = 0; i < project.covers().size(); i++) {
            designs.add(told(i, covering -> design(parts, resizing, covering, steps)));
        }
        return List.copyOf(designs);
    }

    private CoverDesign design(Parts parts, Resizing resizing, Covering covering, int steps) {
        CoverFit fit = CoverFit.of(Patterns.of(parts, covering.cover()), covering.stocks());
        Optional<Mends> mends = fit.misfits().isEmpty()
                ? Optional.empty()
                : Optional.of(Mends.of(parts.dome().spec(), parts.joinery(), covering.cover(), covering.stocks()));
        Layout layout = layout(covering, steps);
        Optional<SeamSaving> saving = covering.cover().treatment().split() == Splitting.WHEN_IT_SAVES
                ? SeamSaving.of(fit, layout)
                : Optional.empty();
        Optional<CoverPlan> plan = saving.map(SeamSaving::plan).or(() -> CoverPlan.of(fit, layout));
        if (from.isPresent() && sizes(covering) && !plan.map(this::isSupplied).orElse(false)) {
            // other work may miss the plan that the size was found with
            plan = CoverPlan.of(fit, layout(covering, from.get().steps()));
            saving = Optional.empty();
        }
        Optional<CoverPlan> free = plan;
        List<List<Panel>> patches = free.isPresent() ? patches(parts, covering) : List.of();
        Optional<BatchedCover> batched =
                covering.byPatches() ? free.map(laid -> BatchedCover.of(laid, patches, layout)) : Optional.empty();
        Optional<CoverPlan> last = batched.map(BatchedCover::plan).or(() -> free.map(laid -> handedOut(laid, patches)));
        Optional<StockCurve> curve =
                covering.byPatches() ? Optional.empty() : free.flatMap(f -> StockCurve.ofCover(f, resizing, layout));
        return new CoverDesign(last.map(CoverPlan::fit).orElse(fit), mends, last, saving, curve, batched);
    }

    /** The panels patch by patch; none of a dome so large that nobody sorts its pieces, unless that was asked for. */
    private List<List<Panel>> patches(Parts parts, Covering covering) {
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

    private boolean sizes(Covering covering) {
        return project.size() instanceof SizeWish.WidestFrom wish
                && wish.cover().equals(covering.cover().name());
    }

    private boolean isSupplied(CoverPlan plan) {
        return project.size() instanceof SizeWish.WidestFrom wish
                && wish.supply().holds(wish.supply().usedBy(plan.plan()));
    }

    private static Layout layout(Covering covering, int steps) {
        return new Layout(covering.spacingMm(), steps, THREADS);
    }

    /** The dome that a cover decides, if one does. */
    static Optional<WidestFor> widest(Project project) {
        if (!(project.size() instanceof SizeWish.WidestFor wish)) {
            return Optional.empty();
        }
        return Optional.of(new CoverDesigns(project, Optional.empty())
                .told(
                        place(project, wish.cover()),
                        c -> WidestFor.of(project.dome(), project.joinery(), c.cover(), c.stocks())));
    }

    /** The dome that the supply of a cover decides, if one does. */
    static Optional<WidestFrom> widestFrom(Project project) {
        if (!(project.size() instanceof SizeWish.WidestFrom wish)) {
            return Optional.empty();
        }
        if (project.dome().keep() instanceof Keep.AboveHeight above && above.heightMm() != 0) {
            throw new CalotteException(
                    Code.CONFLICT,
                    "size.widest-from",
                    "which panels lie above that height depends on the size, which is asked for here.",
                    "Keep a fraction of the rows, or { above: 0 mm }, or give the radius.");
        }
        return Optional.of(new CoverDesigns(project, Optional.empty()).told(place(project, wish.cover()), c -> {
            Question question = new Question(c.cover(), c.stocks().get(0), c.spacingMm(), wish.supply());
            return WidestFrom.of(new SizedParts(project), question, THREADS);
        }));
    }

    private static int place(Project project, String cover) {
        return project.covers().stream().map(c -> c.cover().name()).toList().indexOf(cover);
    }

    private <T> T told(int place, Function<Covering, T> work) {
        Covering covering = project.covers().get(place);
        try {
            return work.apply(covering);
        } catch (CalotteException e) {
            String byName = "covers." + covering.cover().name() + ".";
            throw new CalotteException(e.problems().stream()
                    .map(problem -> new Problem(
                            problem.code(),
                            problem.where()
                                    .replace(byName, "covers.")
                                    .replaceFirst("^covers\\.", "covers[" + place + "]."),
                            problem.what(),
                            problem.mend()))
                    .toList());
        }
    }
}
