package dev.calotte.cli.brief;

import java.util.Comparator;
import java.util.Optional;

/**
 * A place in the text of a brief.
 *
 * @param line from 1
 * @param column from 1, in characters
 */
record Place(int line, int column) implements Comparable<Place> {

    private static final Comparator<Place> ORDER =
            Comparator.comparingInt(Place::line).thenComparingInt(Place::column);
    private static final String LINE = "line ";
    private static final String COLUMN = ", column ";

    @Override
    public int compareTo(Place other) {
        return ORDER.compare(this, other);
    }

    /** The place in words, for what has no path of keys. */
    String where() {
        return LINE + line + COLUMN + column;
    }

    /** The place that {@link #where} told of, if it is one. */
    static Optional<Place> of(String where) {
        int comma = where.indexOf(COLUMN);
        if (!where.startsWith(LINE) || comma < 0) {
            return Optional.empty();
        }
        try {
            return Optional.of(new Place(
                    Integer.parseInt(where.substring(LINE.length(), comma)),
                    Integer.parseInt(where.substring(comma + COLUMN.length()))));
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }
}
