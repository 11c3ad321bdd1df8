package dev.calotte.check;

import java.util.List;

/**
 * A table of texts.
 *
 * @param header the names of its columns
 * @param rows its rows, each with a cell for each column
 */
public record Table(List<String> header, List<List<String>> rows) {

    /**
     * Copies the lists.
     *
     * @param header the names of its columns
     * @param rows its rows
     */
    public Table {
        header = List.copyOf(header);
        rows = List.copyOf(rows);
    }
}
