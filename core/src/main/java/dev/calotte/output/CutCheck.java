package dev.calotte.output;

import dev.calotte.choose.CoverPlan;
import dev.calotte.contour.Contours;
import dev.calotte.contour.Contours.SharedEdges;
import dev.calotte.contour.DoubleCuts;
import dev.calotte.document.Drawing;
import dev.calotte.drawing.CoverSheets;
import dev.calotte.drawing.Kerf;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem;
import dev.calotte.problem.Problem.Code;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Looks for sheets on which cuts lie on each other, though every piece is to be cut by itself: where pieces lie edge to
 * edge, or, once cut lines are moved for a kerf, where they are as far apart as the kerf is wide.
 */
public final class CutCheck {

    private CutCheck() {}

    /**
     * Checks the sheets of all covers.
     *
     * @param contents what documents are about
     * @param contours how tools follow the lines of drawings
     * @throws CalotteException at {@code covers[i].spacing} for each cover with an edge that would be cut twice
     */
    public static void check(Contents contents, Contours contours) {
        if (contours.sharedEdges() == SharedEdges.ONCE) {
            return;
        }
        List<Problem> problems = new ArrayList<>();
        for (CoverPlan plan : contents.plans()) {
            int cover = contents.covers().indexOf(plan.fit());
            CoverSheets.of(plan, contents.subject().units()).stream()
                    .map(sheet -> contents.kerfMm() > 0 ? new Kerf(contents.kerfMm()).of(sheet) : sheet)
                    .flatMap(sheet -> problem(sheet, cover).stream())
                    .findFirst()
                    .ifPresent(problems::add);
        }
        if (!problems.isEmpty()) {
            throw new CalotteException(problems);
        }
    }

    private static Optional<Problem> problem(Drawing sheet, int cover) {
        return DoubleCuts.in(sheet)
                .map(twice -> new Problem(
                        Code.CONFLICT,
                        "covers[" + cover + "].spacing",
                        "cuts lie on each other: on " + sheet.name() + " " + twice.text() + ".",
                        "Write a spacing larger than the width of the cut, or output: { shared-edges: once } for a laser"
                                + " that cuts shared edges once."));
    }
}
