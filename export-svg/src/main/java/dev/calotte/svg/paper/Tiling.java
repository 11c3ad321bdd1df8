package dev.calotte.svg.paper;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.NavigableSet;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;

/**
 * A pattern spread over pages. Places are measured from the lower left corner of the window of the lowest, leftmost page.
 *
 * @param layout where things stand on a page
 * @param columns how many pages across
 * @param rows how many pages down
 * @param inks the lines of the whole pattern
 * @param pages the pages that show some of it, row by row; none if they would be more than {@link Template#MOST_PAGES}
 */
record Tiling(PageLayout layout, int columns, int rows, List<Ink> inks, Set<Cell> pages) {

    private static final double ROUNDING_MM = 1e-6;

    /** Upright or turned by a quarter, whichever needs fewer pages; upright if both need as many. */
    static Tiling of(PageLayout layout, List<Ink> pattern) {
        Tiling upright = laid(layout, pattern);
        if (upright.isOnePage()) {
            return upright;
        }
        Tiling turned = laid(layout, pattern.stream().map(Tiling::turned).toList());
        return turned.cost() < upright.cost() ? turned : upright;
    }

    private static Ink turned(Ink ink) {
        return mapped(ink, chain -> {
            double[] turned = new double[chain.length];
            for (int i = 0; i < chain.length; i += 2) {
                turned[i] = -chain[i + 1];
                turned[i + 1] = chain[i];
            }
            return turned;
        });
    }

    private static Tiling laid(PageLayout layout, List<Ink> pattern) {
        Window bounds = Window.round(
                pattern.stream().flatMap(ink -> ink.chains().stream()).toList());
        int columns = count(bounds.width(), layout.acrossMm());
        int rows = count(bounds.height(), layout.downMm());
        double left = (columns * layout.acrossMm() + PageLayout.OVERLAP - bounds.width()) / 2 - bounds.left();
        double bottom = (rows * layout.downMm() + PageLayout.OVERLAP - bounds.height()) / 2 - bounds.bottom();
        List<Ink> inks = pattern.stream().map(ink -> shifted(ink, left, bottom)).toList();
        Tiling whole = new Tiling(layout, columns, rows, inks, Set.of());
        return new Tiling(layout, columns, rows, inks, whole.needed());
    }

    private static int count(double length, double step) {
        return Math.max(1, (int) Math.ceil((length - PageLayout.OVERLAP - ROUNDING_MM) / step));
    }

    /** A line that comes back to where it began crosses no fewer pages than lie in a row or a column. */
    private Set<Cell> needed() {
        NavigableSet<Cell> needed = new TreeSet<>();
        if (Math.max(columns, rows) <= Template.MOST_PAGES) {
            for (int row = 1; row <= rows; row++) {
                for (int column = 1; column <= columns; column++) {
                    needed.add(new Cell(row, column));
                }
            }
            needed.removeIf(cell -> !holds(window(cell)));
            Island.join(needed);
            List.copyOf(needed).stream()
                    .filter(cell -> isSpare(cell, needed) && Island.isOneWithout(cell, needed))
                    .forEach(needed::remove);
        }
        return needed.size() > Template.MOST_PAGES ? Set.of() : Collections.unmodifiableSet(needed);
    }

    private boolean holds(Window part) {
        return inks.stream().anyMatch(ink -> !part.of(ink.chains()).isEmpty());
    }

    /** Whether others of the pages show, where they overlap this one, all that it shows. */
    private boolean isSpare(Cell cell, Set<Cell> pages) {
        for (int down = -1; down <= 1; down++) {
            for (int right = -1; right <= 1; right++) {
                if (!isShared(cell, down, right, pages) && holds(part(cell, down, right))) {
                    return false;
                }
            }
        }
        return true;
    }

    private static boolean isShared(Cell cell, int down, int right, Set<Cell> pages) {
        boolean above = down != 0 && pages.contains(cell.moved(down, 0));
        boolean beside = right != 0 && pages.contains(cell.moved(0, right));
        return above || beside || (down != 0 && right != 0 && pages.contains(cell.moved(down, right)));
    }

    /** One of the nine parts of a page: its middle, its strips that the next pages show too, and their corners. */
    private Window part(Cell cell, int down, int right) {
        Window page = window(cell);
        double strip = PageLayout.OVERLAP;
        return new Window(
                right > 0 ? page.right() - strip : page.left() + (right == 0 ? strip : 0),
                down < 0 ? page.top() - strip : page.bottom() + (down == 0 ? strip : 0),
                right < 0 ? page.left() + strip : page.right() - (right == 0 ? strip : 0),
                down > 0 ? page.bottom() + strip : page.top() - (down == 0 ? strip : 0));
    }

    /** What stays in sight of a page when the next ones lie on its right and its lower edge. */
    Window inSight(Cell cell) {
        Window page = window(cell);
        double right = pages.contains(cell.moved(0, 1)) ? PageLayout.OVERLAP : 0;
        double bottom = pages.contains(cell.moved(1, 0)) ? PageLayout.OVERLAP : 0;
        return new Window(page.left(), page.bottom() + bottom, page.right() - right, page.top());
    }

    /** What a page shows, in places of the pattern. */
    private Window window(Cell cell) {
        Window page = layout.window();
        double x = (cell.column() - 1) * layout.acrossMm();
        double y = (rows - cell.row()) * layout.downMm();
        return new Window(x, y, x + page.width(), y + page.height());
    }

    boolean isOnePage() {
        return columns == 1 && rows == 1;
    }

    private int cost() {
        return pages.isEmpty() ? Integer.MAX_VALUE : pages.size();
    }

    /** What a page shows, in its own places. */
    List<Ink> shown(Cell cell) {
        Window page = layout.window();
        Window seen = window(cell);
        List<Ink> shown = new ArrayList<>();
        for (Ink ink : inks) {
            Ink part = new Ink(ink.id(), ink.pen(), seen.of(ink.chains()));
            if (!part.chains().isEmpty()) {
                shown.add(shifted(part, page.left() - seen.left(), page.bottom() - seen.bottom()));
            }
        }
        return shown;
    }

    static Ink shifted(Ink ink, double right, double up) {
        return mapped(ink, chain -> {
            double[] shifted = new double[chain.length];
            for (int i = 0; i < chain.length; i += 2) {
                shifted[i] = chain[i] + right;
                shifted[i + 1] = chain[i + 1] + up;
            }
            return shifted;
        });
    }

    private static Ink mapped(Ink ink, UnaryOperator<double[]> map) {
        return new Ink(ink.id(), ink.pen(), ink.chains().stream().map(map).toList());
    }
}
