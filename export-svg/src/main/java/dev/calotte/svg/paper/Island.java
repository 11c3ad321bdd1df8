package dev.calotte.svg.paper;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.NavigableSet;
import java.util.Set;
import java.util.TreeSet;

/** Pages that can be taped to one another, side to side. */
final class Island {

    private Island() {}

    /** Adds pages, the fewest from one island to the next, until all of them hang together. */
    static void join(NavigableSet<Cell> pages) {
        for (Set<Cell> first = of(pages); first.size() < pages.size(); first = of(pages)) {
            bridge(first, pages);
        }
    }

    /** Whether pages still hang together when one of them is left out. */
    static boolean isOneWithout(Cell cell, NavigableSet<Cell> pages) {
        NavigableSet<Cell> others = new TreeSet<>(pages);
        others.remove(cell);
        return of(others).size() == others.size();
    }

    private static Set<Cell> of(NavigableSet<Cell> pages) {
        Set<Cell> island = new TreeSet<>();
        Deque<Cell> open = new ArrayDeque<>(pages.isEmpty() ? List.of() : List.of(pages.first()));
        while (!open.isEmpty()) {
            Cell cell = open.pop();
            if (pages.contains(cell) && island.add(cell)) {
                open.addAll(List.of(cell.moved(0, 1), cell.moved(0, -1), cell.moved(1, 0), cell.moved(-1, 0)));
            }
        }
        return island;
    }

    private static void bridge(Set<Cell> island, NavigableSet<Cell> pages) {
        Cell from = pages.first();
        Cell to = from;
        int least = Integer.MAX_VALUE;
        for (Cell one : island) {
            for (Cell other : pages) {
                if (one.stepsTo(other) < least && !island.contains(other)) {
                    least = one.stepsTo(other);
                    from = one;
                    to = other;
                }
            }
        }
        while (!from.equals(to)) {
            int columns = Integer.signum(to.column() - from.column());
            from = columns == 0 ? from.moved(Integer.signum(to.row() - from.row()), 0) : from.moved(0, columns);
            pages.add(from);
        }
    }
}
