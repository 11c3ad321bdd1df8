package dev.calotte.cli.brief;

import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem;
import java.util.List;

/** Briefs for tests. */
final class Briefs {

    static final String LEAST = "dome: { breakdown: 3 }\nsize: { radius: 3 m }\n";

    private Briefs() {}

    static BriefText of(String text) {
        return BriefText.of("brief.yaml", text);
    }

    /** The problems of a brief, none if it is sound. */
    static List<Problem> problems(BriefText brief) {
        try {
            brief.project();
            return List.of();
        } catch (CalotteException e) {
            return e.problems();
        }
    }
}
