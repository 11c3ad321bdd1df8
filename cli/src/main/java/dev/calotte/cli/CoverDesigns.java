package dev.calotte.cli;

import dev.calotte.choose.CoverFit;
import dev.calotte.choose.CoverPlan;
import dev.calotte.choose.Mends;
import dev.calotte.choose.WidestFor;
import dev.calotte.cli.brief.Covering;
import dev.calotte.cli.brief.Project;
import dev.calotte.cli.brief.SizeWish;
import dev.calotte.nest.Layout;
import dev.calotte.parts.Parts;
import dev.calotte.pattern.Patterns;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The covers of a project; a problem of a cover, which core knows by its name, is told by its place in the brief. */
final class CoverDesigns {

    private static final int THREADS = 2;

    private final Project project;

    private CoverDesigns(Project project) {
        this.project = project;
    }

    /** The covers, their plans improved for so many steps. */
    static List<CoverDesign> of(Project project, Parts parts, int steps) {
        List<CoverDesign> designs = new ArrayList<>();
        for (int i = 0; i < project.covers().size(); i++) {
            designs.add(new CoverDesigns(project).told(i, covering -> design(parts, covering, steps)));
        }
        return List.copyOf(designs);
    }

    private static CoverDesign design(Parts parts, Covering covering, int steps) {
        CoverFit fit = CoverFit.of(Patterns.of(parts, covering.cover()), covering.stocks());
        Optional<Mends> mends = fit.misfits().isEmpty()
                ? Optional.empty()
                : Optional.of(Mends.of(parts.dome().spec(), parts.joinery(), covering.cover(), covering.stocks()));
        return new CoverDesign(fit, mends, CoverPlan.of(fit, new Layout(covering.spacingMm(), steps, THREADS)));
    }

    /** The dome that a cover decides, if one does. */
    static Optional<WidestFor> widest(Project project) {
        if (!(project.size() instanceof SizeWish.WidestFor wish)) {
            return Optional.empty();
        }
        List<String> names =
                project.covers().stream().map(c -> c.cover().name()).toList();
        return Optional.of(new CoverDesigns(project)
                .told(
                        names.indexOf(wish.cover()),
                        c -> WidestFor.of(project.dome(), project.joinery(), c.cover(), c.stocks())));
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
