package dev.calotte.cli;

import dev.calotte.cli.brief.Project;
import dev.calotte.dome.Dome;
import dev.calotte.dome.Size;
import dev.calotte.parts.Parts;
import java.util.function.Function;

/**
 * The parts of a project's dome in any size, its openings left out.
 *
 * @param project what is asked for
 */
record SizedParts(Project project) implements Function<Size, Parts> {

    @Override
    public Parts apply(Size size) {
        Parts whole = Parts.of(Dome.of(project.dome().withSize(size)), project.joinery());
        return project.openings().isEmpty()
                ? whole
                : Parts.of(MarkedOpenings.cut(whole, project.openings()), project.joinery());
    }
}
