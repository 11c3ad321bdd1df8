package dev.calotte.model;

import java.util.List;

/**
 * What a scale model is made of.
 *
 * @param scale how many times smaller than the dome it is, 20 for 1:20
 * @param board what a slotted kit is cut from
 * @param card what nets and panels are cut from
 * @param kinds the ways to build it that are drawn, in this order
 */
public record ModelSpec(double scale, Board board, Card card, List<ModelKind> kinds) {

    /**
     * Copies the list.
     *
     * @param scale how many times smaller than the dome it is, above 0
     * @param board what a slotted kit is cut from
     * @param card what nets and panels are cut from
     * @param kinds the ways to build it
     * @throws IllegalArgumentException if the scale is not above 0
     */
    public ModelSpec {
        kinds = List.copyOf(kinds);
        if (!(scale > 0 && scale < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("no model is at a scale of 1:" + scale);
        }
    }

    /**
     * A slotted kit and a net.
     *
     * @param scale how many times smaller than the dome the model is
     * @param board what all is cut from
     * @return the specification
     */
    public static ModelSpec of(double scale, Board board) {
        return new ModelSpec(
                scale,
                board,
                new Card(board.lengthMm(), board.widthMm(), Card.USUAL_TAB_MM),
                List.of(ModelKind.SLOTTED, ModelKind.NET));
    }

    /**
     * The same, built in other ways.
     *
     * @param others the ways to build it
     * @return a copy
     */
    public ModelSpec withKinds(ModelKind... others) {
        return new ModelSpec(scale, board, card, List.of(others));
    }
}
