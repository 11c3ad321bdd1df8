package dev.calotte.cli;

import dev.calotte.choose.CoverFit;
import dev.calotte.cli.brief.Project;
import dev.calotte.parts.Parts;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem;
import dev.calotte.solid.Jigs;
import dev.calotte.solid.PrintModels;
import java.util.ArrayList;
import java.util.List;

/** Whether the model and the jigs of a brief can be printed, found out without shaping them. */
final class PrintCheck {

    private final List<Problem> problems = new ArrayList<>();

    private PrintCheck() {}

    /** Tells all that cannot be printed at once. */
    static void check(Project project, Parts parts, List<CoverDesign> covers) {
        PrintCheck check = new PrintCheck();
        project.extras().print().ifPresent(print -> check.tried(() -> PrintModels.check(parts.dome(), print)));
        project.extras()
                .jigs()
                .ifPresent(jigs -> check.tried(() -> Jigs.of(
                        project.title(),
                        parts,
                        covers.stream()
                                .map(CoverDesign::fit)
                                .map(CoverFit::patterns)
                                .toList(),
                        jigs)));
        if (!check.problems.isEmpty()) {
            throw new CalotteException(check.problems);
        }
    }

    private void tried(Runnable work) {
        try {
            work.run();
        } catch (CalotteException e) {
            problems.addAll(e.problems());
        }
    }
}
