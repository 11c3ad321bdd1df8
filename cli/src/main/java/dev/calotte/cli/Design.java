package dev.calotte.cli;

import dev.calotte.caution.Caution;
import dev.calotte.caution.Cautions;
import dev.calotte.cli.brief.Project;
import dev.calotte.dome.Dome;
import dev.calotte.parts.Parts;
import java.util.List;
import java.util.stream.Stream;

/**
 * A brief and all that was computed from it.
 *
 * @param project what was asked for
 * @param dome its geometry
 * @param parts its kinds
 * @param cautions what to mind
 */
public record Design(Project project, Dome dome, Parts parts, List<Caution> cautions) {

    /**
     * Copies the list.
     *
     * @param project what was asked for
     * @param dome its geometry
     * @param parts its kinds
     * @param cautions what to mind
     */
    public Design {
        cautions = List.copyOf(cautions);
    }

    /**
     * What the reader should know about how the brief was understood and what came of it.
     *
     * @return sentences, possibly none
     */
    public List<String> notes() {
        return Stream.concat(dome.notes().stream(), parts.notes().stream()).toList();
    }

    /**
     * Computes what a brief asks for.
     *
     * @param project what is asked for
     * @return the design
     */
    static Design of(Project project) {
        Dome dome = Dome.of(project.dome());
        return new Design(project, dome, Parts.of(dome, project.joinery()), Cautions.of(dome));
    }
}
