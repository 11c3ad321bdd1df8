package dev.calotte.cli.report;

import java.util.ArrayList;
import java.util.List;

/** A plain table for the terminal: a head, then rows, in columns two spaces apart. */
final class TextTable {

    private final List<List<String>> rows = new ArrayList<>();
    private final int texts;

    /**
     * Begins a table.
     *
     * @param texts how many columns from the last hold texts and stand left; the others hold numbers and stand right,
     *     but for the first, which holds marks
     * @param head the names of the columns
     */
    TextTable(int texts, String... head) {
        this.texts = texts;
        rows.add(List.of(head));
    }

    void row(String... cells) {
        rows.add(List.of(cells));
    }

    List<String> lines() {
        return rows.stream().map(this::line).toList();
    }

    private String line(List<String> row) {
        StringBuilder line = new StringBuilder(" ");
        for (int c = 0; c < row.size(); c++) {
            String pad = " ".repeat(width(c) - row.get(c).length());
            boolean left = c == 0 || c >= row.size() - texts;
            line.append(' ').append(left ? row.get(c) + pad : pad + row.get(c)).append(' ');
        }
        return line.toString().stripTrailing();
    }

    private int width(int column) {
        return rows.stream().mapToInt(row -> row.get(column).length()).max().orElse(0);
    }
}
