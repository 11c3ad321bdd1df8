package dev.calotte.document;

import java.util.List;

/**
 * A dome as a picture that can be turned: places, and the pieces that lie between them. Millimetres, z upwards, seen
 * from any side.
 *
 * @param xyz x, y and z of each place
 * @param pieces what lies between them
 */
public record Scene(List<Double> xyz, List<Piece> pieces) {

    /**
     * A hub, strut or panel.
     *
     * @param mark the mark of the piece, unique among the pieces, for example {@code P4L-3.07}
     * @param kind the mark of its kind, for example {@code P4L}
     * @param colour the number of its colour from 1, or 0 for none
     * @param places the numbers of its places: one for a hub, two for a strut, three or more for a panel,
     *     counter-clockwise seen from outside
     * @param about what is said of it when it is touched, for example its length; one line
     */
    public record Piece(String mark, String kind, int colour, List<Integer> places, String about) {

        /**
         * Copies the list.
         *
         * @param mark the mark of the piece
         * @param kind the mark of its kind
         * @param colour the number of its colour
         * @param places the numbers of its places
         * @param about what is said of it
         */
        public Piece {
            places = List.copyOf(places);
        }
    }

    /**
     * Copies the lists.
     *
     * @param xyz the places
     * @param pieces what lies between them
     * @throws IllegalArgumentException if a piece has a place that is not there, or the numbers do not make whole places
     */
    public Scene {
        xyz = List.copyOf(xyz);
        pieces = List.copyOf(pieces);
        int places = xyz.size() / 3;
        if (3 * places != xyz.size()) {
            throw new IllegalArgumentException(xyz.size() + " numbers do not make whole places");
        }
        for (Piece piece : pieces) {
            if (piece.places().isEmpty() || piece.places().stream().anyMatch(p -> p < 0 || p >= places)) {
                throw new IllegalArgumentException(piece.mark() + " has a place that is not there");
            }
        }
    }
}
