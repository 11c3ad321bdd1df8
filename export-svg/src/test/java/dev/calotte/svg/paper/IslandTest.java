package dev.calotte.svg.paper;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.testing.Cases;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class IslandTest {

    private static NavigableSet<Cell> pages(int... rowsAndColumns) {
        NavigableSet<Cell> pages = new TreeSet<>();
        for (int i = 0; i < rowsAndColumns.length; i += 2) {
            pages.add(new Cell(rowsAndColumns[i], rowsAndColumns[i + 1]));
        }
        return pages;
    }

    private static NavigableSet<Cell> joined(int... rowsAndColumns) {
        NavigableSet<Cell> pages = pages(rowsAndColumns);
        Island.join(pages);
        return pages;
    }

    /** Whether each page can be reached from the first by whole sides. */
    private static boolean hangTogether(NavigableSet<Cell> pages) {
        List<Cell> reached = new ArrayList<>(List.of(pages.first()));
        for (int i = 0; i < reached.size(); i++) {
            Cell here = reached.get(i);
            for (Cell other : pages) {
                boolean beside = Math.abs(here.row() - other.row()) + Math.abs(here.column() - other.column()) == 1;
                if (beside && !reached.contains(other)) {
                    reached.add(other);
                }
            }
        }
        return reached.size() == pages.size();
    }

    @Test
    void pagesThatHangTogetherStayAsTheyAre() {
        assertThat(joined(1, 1, 1, 2, 2, 2)).isEqualTo(pages(1, 1, 1, 2, 2, 2));
    }

    /** By hand. */
    @Test
    void islandsAreBridgedWithTheFewestPages() {
        assertThat(joined(1, 1, 1, 4)).isEqualTo(pages(1, 1, 1, 2, 1, 3, 1, 4));
        assertThat(joined(1, 2, 4, 2)).isEqualTo(pages(1, 2, 2, 2, 3, 2, 4, 2));
        assertThat(joined(1, 1, 2, 2)).hasSize(3);
        assertThat(joined(1, 1, 1, 2, 1, 3, 3, 3)).isEqualTo(pages(1, 1, 1, 2, 1, 3, 2, 3, 3, 3));
        assertThat(joined(1, 3, 3, 1, 3, 2, 3, 3)).isEqualTo(pages(1, 3, 2, 3, 3, 1, 3, 2, 3, 3));
    }

    @Test
    void anyPagesHangTogetherAfterwardsAndNoneIsLost() {
        Cases.each(60, (random, size) -> {
            NavigableSet<Cell> pages = new TreeSet<>();
            for (int n = 0; n < 1 + size % 8; n++) {
                pages.add(new Cell(1 + random.nextInt(6), 1 + random.nextInt(6)));
            }
            NavigableSet<Cell> before = new TreeSet<>(pages);
            Island.join(pages);
            assertThat(pages).containsAll(before);
            assertThat(hangTogether(pages)).isTrue();
        });
    }

    @Test
    void aPageInTheMiddleOfARowCannotBeLeftOut() {
        NavigableSet<Cell> row = pages(1, 1, 1, 2, 1, 3);
        assertThat(Island.isOneWithout(new Cell(1, 2), row)).isFalse();
        assertThat(Island.isOneWithout(new Cell(1, 1), row)).isTrue();
        assertThat(Island.isOneWithout(new Cell(1, 3), row)).isTrue();
        assertThat(Island.isOneWithout(new Cell(1, 1), pages(1, 1, 1, 2, 2, 1, 2, 2)))
                .isTrue();
    }
}
