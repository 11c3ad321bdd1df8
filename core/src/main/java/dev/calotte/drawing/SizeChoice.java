package dev.calotte.drawing;

import java.util.List;
import java.util.function.Function;

/** Chooses the page of a drawing. */
final class SizeChoice {

    private SizeChoice() {}

    /**
     * A drawing on a page of some size.
     *
     * @param draft the drawing
     * @param misfits how many of its marks had no room
     */
    record Attempt(Draft draft, int misfits) {}

    /** The drawing on the smallest page on which every mark has room; if there is none, on the largest. */
    static Draft smallest(List<PaperSize> sizes, Function<PaperSize, Attempt> draw) {
        Attempt attempt = draw.apply(sizes.get(0));
        for (int i = 1; i < sizes.size() && attempt.misfits > 0; i++) {
            attempt = draw.apply(sizes.get(i));
        }
        return attempt.draft;
    }
}
