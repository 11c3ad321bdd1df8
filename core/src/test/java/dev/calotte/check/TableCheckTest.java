package dev.calotte.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class TableCheckTest {

    private static final List<String> HEADER = List.of("mark", "count", "length_mm");
    private static final List<List<String>> ROWS =
            List.of(List.of("S1", "30", "871.500"), List.of("S2", "55", "1009.200"), List.of("S2", "55", "1031.000"));

    private static List<Finding> found(int keys, List<List<String>> seen) {
        return Found.list(findings ->
                TableCheck.of(new Table(HEADER, ROWS), new Table(HEADER, seen), keys, String::equals, findings));
    }

    private static List<String> places(List<Finding> findings) {
        return findings.stream()
                .map(finding -> finding.fault() + " " + finding.place())
                .toList();
    }

    /** Rows of one key may come in any order. */
    @Test
    void nothingIsFoundInTheSameTable() {
        assertThat(found(1, ROWS)).isEmpty();
        assertThat(found(1, List.of(ROWS.get(2), ROWS.get(1), ROWS.get(0)))).isEmpty();
        assertThat(found(9, ROWS)).isEmpty();
    }

    @Test
    void otherColumnsAreFound() {
        Table seen = new Table(List.of("mark", "length_mm", "count"), ROWS);
        assertThat(places(Found.list(
                        findings -> TableCheck.of(new Table(HEADER, ROWS), seen, 1, String::equals, findings))))
                .containsExactly("DIFFERENT the first row");
    }

    @Test
    void aRowThatIsGoneDoubledOrForeignIsFound() {
        assertThat(places(found(1, Found.without(ROWS, 0)))).containsExactly("MISSING S1");
        assertThat(places(found(2, Found.with(ROWS, ROWS.get(1))))).containsExactly("DOUBLED S2 55");
        assertThat(places(found(2, Found.with(ROWS, List.of("S3", "1", "2"))))).containsExactly("FOREIGN S3 1");
    }

    @Test
    void anotherCellIsFoundWithBothTexts() {
        assertThat(found(1, Found.changed(ROWS, 0, row -> List.of("S1", "31", "871.500"))))
                .containsExactly(new Finding(
                        Fault.DIFFERENT, "a file", "S1", "count is \"31\", the record has \"30\".", "Make it again."));
    }

    @Test
    void aRowWithMoreOrFewerCellsIsFound() {
        assertThat(found(1, Found.changed(ROWS, 0, row -> List.of("S1", "30"))))
                .extracting(Finding::what)
                .containsExactly("its row has 2 cells, not 3.");
        assertThat(found(1, Found.changed(ROWS, 0, row -> Found.with(row, ""))))
                .extracting(Finding::what)
                .containsExactly("its row has 4 cells, not 3.");
    }
}
