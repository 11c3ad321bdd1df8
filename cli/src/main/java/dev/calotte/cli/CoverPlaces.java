package dev.calotte.cli;

import dev.calotte.cli.brief.Covering;
import dev.calotte.cli.brief.Project;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem;
import java.util.function.Function;

/**
 * Where the covers of a project stand in its brief. Core knows them by their names; what goes wrong with one is told by
 * its place.
 *
 * @param project what is asked for
 */
record CoverPlaces(Project project) {

    /** Work on the cover of that name. */
    <T> T named(String cover, Function<Covering, T> work) {
        return at(project.covers().stream().map(c -> c.cover().name()).toList().indexOf(cover), work);
    }

    /** Work on the cover at a place, from 0. */
    <T> T at(int place, Function<Covering, T> work) {
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
