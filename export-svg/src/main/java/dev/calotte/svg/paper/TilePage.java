package dev.calotte.svg.paper;

import dev.calotte.document.Drawing;
import dev.calotte.document.Picture.Anchor;
import dev.calotte.document.Picture.Label;
import java.util.ArrayList;
import java.util.List;

/** A page of a template at full size. */
final class TilePage {

    private static final double CROSS_ARM = 4;
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
        return frame.copy()
                .placed(place)
                .with(joins(cell))
                .with(tiling.shown(cell))
                .with(small(cell))
                .page(drawing.title() + ", " + place);
    }

    /** Where it is still read when the heading is cut off, and hidden when the page below is taped on. */
    private Label small(Cell cell) {
        return new Label(
                cell.mark(),
                window.right() - PageLayout.OVERLAP / 2,
                window.bottom() + PageLayout.OVERLAP / 2,
                PageFrame.SMALL,
                Anchor.MIDDLE);
    }

    private List<Ink> joins(Cell cell) {
        double right = window.right() - PageLayout.OVERLAP;
        double bottom = window.bottom() + PageLayout.OVERLAP;
        double[] leftEdge = {window.left(), window.bottom(), window.left(), window.top()};
        double[] topEdge = {window.left(), window.top(), window.right(), window.top()};
        double[] rightEdge = {right, window.bottom(), right, window.top()};
        double[] bottomEdge = {window.left(), bottom, window.right(), bottom};
        List<Ink> inks = new ArrayList<>();
        add("TRIM", Pen.TRIM, inks, edges(has(cell, 0, -1), leftEdge, has(cell, -1, 0), topEdge));
        add("NEIGHBOURS", Pen.FAINT, inks, edges(has(cell, 0, 1), rightEdge, has(cell, 1, 0), bottomEdge));
        add("CROSSES", Pen.FINE, inks, crosses(cell));
        return inks;
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
