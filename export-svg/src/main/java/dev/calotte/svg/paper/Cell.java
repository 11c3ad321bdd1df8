package dev.calotte.svg.paper;

/**
 * The place of a page in its template.
 *
 * @param row from 1 at the top
 * @param column from 1 at the left
 */
record Cell(int row, int column) implements Comparable<Cell> {

    String mark() {
        return "r" + row + "c" + column;
    }

    Cell moved(int rows, int columns) {
        return new Cell(row + rows, column + columns);
    }

    int stepsTo(Cell other) {
        return Math.abs(row - other.row) + Math.abs(column - other.column);
    }

    /** As one reads. */
    @Override
    public int compareTo(Cell other) {
        return row == other.row ? Integer.compare(column, other.column) : Integer.compare(row, other.row);
    }
}
