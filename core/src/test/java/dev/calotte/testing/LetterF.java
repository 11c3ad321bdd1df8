package dev.calotte.testing;

import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;

/** A letter to cut out. */
public final class LetterF {

    /** Looks like no mirror image or turn of itself. */
    public static final Polyline OUTLINE = Polyline.closed(
            Operation.CUT_OUTER,
            10,
            10,
            40,
            10,
            40,
            60,
            110,
            60,
            110,
            90,
            40,
            90,
            40,
            120,
            120,
            120,
            120,
            150,
            10,
            150);

    private LetterF() {}
}
