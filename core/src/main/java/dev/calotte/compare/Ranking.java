package dev.calotte.compare;

import java.util.Comparator;
import java.util.List;

/**
 * Sorts the domes of a comparison, and finds those that no other beats all round: of two domes one beats the other if it
 * is as good in all criteria and better in one. Domes whose panels do not fit take no part.
 *
 * @param criteria what is looked at
 */
record Ranking(List<Column> criteria) {

    Ranking {
        criteria = List.copyOf(criteria);
    }

    /**
     * What room costs, kinds, and hubs where the domes are of one size, room where they are not. Where it is not known
     * what room costs: bars if they are known, kinds, hubs and room.
     */
    static Ranking of(InCommon common, List<Compared> rows) {
        if (knows(rows, Column.PER_ROOM)) {
            Column last = common instanceof InCommon.OfSize ? Column.HUBS : Column.ROOM;
            return new Ranking(List.of(Column.PER_ROOM, Column.KINDS, last));
        }
        return knows(rows, Column.BARS)
                ? new Ranking(List.of(Column.BARS, Column.KINDS, Column.HUBS, Column.ROOM))
                : new Ranking(List.of(Column.KINDS, Column.HUBS, Column.ROOM));
    }

    private static boolean knows(List<Compared> rows, Column column) {
        return rows.stream().anyMatch(Compared::fits)
                && rows.stream()
                        .filter(Compared::fits)
                        .allMatch(row -> column.of(row).isPresent());
    }

    /** What rows are sorted by if nobody says. */
    Column usual() {
        return criteria.get(0);
    }

    /** What fits first, then by a column, what is not known last. */
    static Comparator<Compared> by(Column column) {
        return Comparator.comparing((Compared row) -> !row.fits()).thenComparingDouble(column::rank);
    }

    /** Whether a row that fits is beaten by none. */
    boolean isBest(Compared row, List<Compared> rows) {
        return row.fits() && rows.stream().noneMatch(other -> beats(other, row));
    }

    private boolean beats(Compared one, Compared other) {
        boolean better = false;
        for (Column criterion : criteria) {
            double difference = criterion.rank(one) - criterion.rank(other);
            if (difference > 0) {
                return false;
            }
            better |= difference < 0;
        }
        return better && one.fits();
    }
}
