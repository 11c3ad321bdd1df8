package dev.calotte.svg.paper;

import dev.calotte.document.Drawing;
import dev.calotte.document.Picture.Label;
import java.util.ArrayList;
import java.util.List;

/** A page of a template at full size. */
final class TilePage {

    private static final double CROSS_ARM = 4;

    /** Room for the small mark of a page, from the right. */
    private static final double WORD = 60;

    private static final String CHECK = "Check all four rulers with a tape.";
    private static final String JOIN =
            " Cut off dotted edges, lay the page on those left and above, cross on cross, tape.";

    private final Drawing drawing;
    private final Tiling tiling;
    private final Window window;
    private final PageFrame frame;

    TilePage(Drawing drawing, Tiling tiling) {
        this.drawing = drawing;
        this.tiling = tiling;
        this.window = tiling.layout().window();
        this.frame = new PageFrame(tiling.layout().size())
                .titled(drawing.title())
                .noted(CHECK + (tiling.isOnePage() ? " " + PageFrame.LINES : JOIN));
    }

    /** The pattern on its only page. */
    PaperPage whole() {
        return frame.copy()
                .placed("on one page")
                .with(tiling.shown(new Cell(1, 1)))
                .page(drawing.title());
    }

    PaperPage page(Cell cell) {
        String place =
                "row " + cell.row() + ", column " + cell.column() + " of " + tiling.rows() + " x " + tiling.columns();
        List<Ink> shown = tiling.shown(cell);
        return frame.copy()
                .placed(place)
                .with(joins(cell))
                .with(shown)
                .with(small(cell, shown))
                .page(drawing.title() + ", " + place);
    }

    /** Where it is still read when the heading is cut off, and hidden when the page below is taped on. */
    private Label small(Cell cell, List<Ink> shown) {
        double top = window.bottom() + PageLayout.OVERLAP;
        return new FreeSpot(shown)
                .label(cell.mark(), new Window(window.right() - WORD, window.bottom(), window.right(), top));
    }

    private List<Ink> joins(Cell cell) {
        double right = window.right() - PageLayout.OVERLAP;
        double bottom = window.bottom() + PageLayout.OVERLAP;
        double[] rightEdge = {right, window.bottom(), right, window.top()};
        double[] bottomEdge = {window.left(), bottom, window.right(), bottom};
        List<Ink> inks = new ArrayList<>();
        add("TRIM", Pen.TRIM, inks, trimmed(cell));
        add("NEIGHBOURS", Pen.FAINT, inks, edges(has(cell, 0, 1), rightEdge, has(cell, 1, 0), bottomEdge));
        add("CROSSES", Pen.FINE, inks, crosses(cell));
        return inks;
    }

    /** Wherever the white paper outside would hide what an earlier page shows, be it only at a corner. */
    private List<double[]> trimmed(Cell cell) {
        double[] left = {window.left(), window.bottom(), window.left(), window.top()};
        double[] top = {window.left(), window.top(), window.right(), window.top()};
        double[] right = {window.right(), window.bottom(), window.right(), window.top()};
        boolean corner = has(cell, -1, -1);
        boolean farCorner = has(cell, -1, 1);
        List<double[]> trimmed = edges(has(cell, 0, -1) || corner, left, has(cell, -1, 0) || corner || farCorner, top);
        if (farCorner && !has(cell, 0, 1)) {
            trimmed.add(right);
        }
        return trimmed;
    }

    private static List<double[]> edges(boolean first, double[] one, boolean second, double[] other) {
        List<double[]> edges = new ArrayList<>();
        if (first) {
            edges.add(one);
        }
        if (second) {
            edges.add(other);
        }
        return edges;
    }

    private static void add(String id, Pen pen, List<Ink> inks, List<double[]> chains) {
        if (!chains.isEmpty()) {
            inks.add(new Ink(id, pen, chains));
        }
    }

    private boolean has(Cell cell, int rows, int columns) {
        return tiling.pages().contains(cell.moved(rows, columns));
    }

    /** At the corners of the window as far as it is not covered, wherever another page has the same corner. */
    private List<double[]> crosses(Cell cell) {
        List<double[]> crosses = new ArrayList<>();
        for (int down = 0; down <= 1; down++) {
            for (int right = 0; right <= 1; right++) {
                int rows = 2 * down - 1;
                int columns = 2 * right - 1;
                if (has(cell, rows, 0) || has(cell, 0, columns) || has(cell, rows, columns)) {
                    crosses.addAll(Cross.at(
                            window.left() + right * tiling.layout().acrossMm(),
                            window.top() - down * tiling.layout().downMm(),
                            CROSS_ARM));
                }
            }
        }
        return crosses;
    }
}
