package dev.calotte.output;

import dev.calotte.book.Matter;
import dev.calotte.choose.CoverFit;
import dev.calotte.choose.CoverPlan;
import dev.calotte.drawing.Subject;
import java.util.List;
import java.util.Optional;

/**
 * What documents are about.
 *
 * @param subject the dome, what it is called, and how lengths are written
 * @param covers its covers; with none, the patterns are the net panels
 * @param plans how the covers are laid on their stock, as far as they are
 * @param kerfMm how wide a cut is, if cut lines are to be moved for that; 0 if not
 * @param extras models and jigs
 * @param book what the build book is made from, if it is wanted
 */
public record Contents(
        Subject subject,
        List<CoverFit> covers,
        List<CoverPlan> plans,
        double kerfMm,
        Extras extras,
        Optional<Matter> book) {

    /**
     * Copies the lists.
     *
     * @param subject the dome
     * @param covers its covers
     * @param plans how the covers are laid
     * @param kerfMm how wide a cut is
     * @param extras models and jigs
     * @param book what the build book is made from
     */
    public Contents {
        covers = List.copyOf(covers);
        plans = List.copyOf(plans);
    }

    /**
     * The dome alone: its frame, its net panels, its hub plates and the drawings that show it.
     *
     * @param subject the dome
     * @return contents without covers, kerf, extras and book
     */
    public static Contents of(Subject subject) {
        return new Contents(subject, List.of(), List.of(), 0, Extras.NONE, Optional.empty());
    }

    /**
     * The same with covers.
     *
     * @param fits the covers
     * @param laid how they are laid on their stock, as far as they are
     * @return the contents
     */
    public Contents withCovers(List<CoverFit> fits, List<CoverPlan> laid) {
        return new Contents(subject, fits, laid, kerfMm, extras, book);
    }

    /**
     * The same with cut lines moved.
     *
     * @param width how wide a cut is, in mm; 0 to leave the lines where they are
     * @return the contents
     */
    public Contents withKerf(double width) {
        return new Contents(subject, covers, plans, width, extras, book);
    }

    /**
     * The same with models and jigs.
     *
     * @param wanted which
     * @return the contents
     */
    public Contents with(Extras wanted) {
        return new Contents(subject, covers, plans, kerfMm, wanted, book);
    }

    /**
     * The same with a build book.
     *
     * @param matter what it is made from
     * @return the contents
     */
    public Contents with(Matter matter) {
        return new Contents(subject, covers, plans, kerfMm, extras, Optional.of(matter));
    }
}
