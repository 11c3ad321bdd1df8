package dev.calotte.caution;

import dev.calotte.assembly.Raise;
import dev.calotte.parts.Parts;
import dev.calotte.pattern.Cover;
import java.util.List;
import java.util.Optional;

/**
 * What decides which cautions concern a dome.
 *
 * @param parts its parts
 * @param covers its covers
 * @param raise from which end it is raised
 * @param printed whether jigs or other parts are printed for it
 * @param lasered whether a model is cut for it, which is work for a laser as a rule
 */
public record Circumstances(Parts parts, List<Clad> covers, Raise raise, boolean printed, boolean lasered) {

    /**
     * A cover and its material.
     *
     * @param cover how it is cut
     * @param material what it is made of, if that is known
     */
    public record Clad(Cover cover, Optional<Material> material) {}

    /**
     * Copies the list.
     *
     * @param parts its parts
     * @param covers its covers
     * @param raise from which end it is raised
     * @param printed whether jigs are printed
     * @param lasered whether a model is cut
     */
    public Circumstances {
        covers = List.copyOf(covers);
    }

    /**
     * A bare frame.
     *
     * @param parts the parts of the dome
     * @return nothing but these
     */
    public static Circumstances of(Parts parts) {
        return new Circumstances(parts, List.of(), Raise.BASE, false, false);
    }
}
