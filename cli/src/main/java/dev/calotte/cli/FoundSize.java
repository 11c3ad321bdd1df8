package dev.calotte.cli;

import dev.calotte.choose.WidestFor;
import dev.calotte.choose.WidestFrom;
import dev.calotte.choose.WidestFrom.Question;
import dev.calotte.cli.brief.Project;
import dev.calotte.cli.brief.SizeWish;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Size;
import dev.calotte.parts.LongestCut;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem.Code;
import java.util.Optional;

/**
 * The size that a brief asks for.
 *
 * @param size the size
 * @param widest what limits it, where a cover decides it
 * @param widestFrom the plan that it was found with, where the supply of a stock decides it
 */
public record FoundSize(Size size, Optional<WidestFor> widest, Optional<WidestFrom> widestFrom) {

    /** The size of a project's dome, which is looked for where the brief alone does not give it. */
    static FoundSize of(Project project) {
        SizeWish wish = project.size();
        if (wish instanceof SizeWish.WidestFor widestFor) {
            WidestFor widest = widest(project, widestFor);
            return new FoundSize(widest.size(), Optional.of(widest), Optional.empty());
        }
        if (wish instanceof SizeWish.WidestFrom widestFrom) {
            WidestFrom widest = widest(project, widestFrom);
            return new FoundSize(widest.size(), Optional.empty(), Optional.of(widest));
        }
        Size size = wish instanceof SizeWish.LongestCut cut
                ? LongestCut.size(project.dome(), project.joinery(), cut.mm())
                : wish.known();
        return new FoundSize(size, Optional.empty(), Optional.empty());
    }

    private static WidestFor widest(Project project, SizeWish.WidestFor wish) {
        return new CoverPlaces(project)
                .named(wish.cover(), c -> WidestFor.of(project.dome(), project.joinery(), c.cover(), c.stocks()));
    }

    private static WidestFrom widest(Project project, SizeWish.WidestFrom wish) {
        if (project.dome().keep() instanceof Keep.AboveHeight above && above.heightMm() != 0) {
            throw new CalotteException(
                    Code.CONFLICT,
                    "size.widest-from",
                    "which panels lie above that height depends on the size, which is asked for here.",
                    "Keep a fraction of the rows, or { above: 0 mm }, or give the radius.");
        }
        return new CoverPlaces(project).named(wish.cover(), c -> {
            Question question = new Question(c.cover(), c.stocks().get(0), c.spacingMm(), wish.supply());
            return WidestFrom.of(new SizedParts(project), question, CoverDesigns.THREADS);
        });
    }
}
