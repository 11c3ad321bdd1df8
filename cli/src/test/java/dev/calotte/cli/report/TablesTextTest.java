package dev.calotte.cli.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class TablesTextTest {

    @Test
    void cellsAreQuotedWhereTheyMustBe() {
        assertThat(new Csv().row("a", "3' 6\"", "x,y", "").toString()).isEqualTo("a,\"3' 6\"\"\",\"x,y\",\n");
    }

    @Test
    void formulasStayTexts() {
        assertThat(new Csv().row("=1+1", "-3.5", "-x", "@a").toString()).isEqualTo("'=1+1,-3.5,'-x,'@a\n");
    }

    @Test
    void columnsOfNumbersStandRightAndMarksLeft() {
        TextTable table = new TextTable(1, "mark", "count", "note");
        table.row("S1", "5", "a");
        table.row("S10", "120", "");
        assertThat(table.lines()).containsExactly("  mark  count  note", "  S1        5  a", "  S10     120");
    }
}
