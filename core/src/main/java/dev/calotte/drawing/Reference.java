package dev.calotte.drawing;

import dev.calotte.document.Drawing.Part;
import dev.calotte.document.Operation;
import dev.calotte.document.Path;
import java.util.List;

/** A line of 100 mm with a tick at either end, to measure a print or a cut by. */
final class Reference {

    static final double LENGTH = 100;
    private static final double TICK = 2;

    private Reference() {}

    /** The line, its left end so far from both borders of the sheet. */
    static Part at(double margin) {
        double end = margin + LENGTH;
        return new Part(
                "REF-100",
                "Reference, 100 mm from tick to tick",
                List.of(
                        Path.open(Operation.REF, margin, margin, end, margin),
                        Path.open(Operation.REF, margin, margin - TICK, margin, margin + TICK),
                        Path.open(Operation.REF, end, margin - TICK, end, margin + TICK)));
    }
}
