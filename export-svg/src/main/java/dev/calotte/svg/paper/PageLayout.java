package dev.calotte.svg.paper;

import dev.calotte.export.PageSize;

/**
 * Where things stand on a page: a heading with rulers along the top, rulers along the left, and the window of the
 * pattern. Neighbouring pages show the last 10 mm of the window to the right and below once more.
 *
 * @param size the paper
 */
record PageLayout(PageSize size) {

    /** 10 mm, and half the width of a line. */
    static final double MARGIN = 10.5;

    static final double OVERLAP = 10;
    private static final double HEADING = 36;
    private static final double RULERS = 13.5;

    Window window() {
        return new Window(MARGIN + RULERS, MARGIN, size.widthMm() - MARGIN, top() - HEADING);
    }

    /** The highest y of anything. */
    double top() {
        return size.heightMm() - MARGIN;
    }

    /** How far a page's column is from the next. */
    double acrossMm() {
        return window().width() - OVERLAP;
    }

    /** How far a page's row is from the next. */
    double downMm() {
        return window().height() - OVERLAP;
    }
}
