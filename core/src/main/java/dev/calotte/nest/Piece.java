package dev.calotte.nest;

import dev.calotte.geometry.ConvexPolygon;
import java.util.OptionalDouble;

/**
 * A convex part to be laid on sheets or rolls, in millimetres.
 *
 * @param mark what it is called
 * @param outline its shape, in a frame of its own
 * @param count how many of them are needed
 * @param mayMirror whether it may be laid face down
 * @param grainRad the direction in its frame, counter-clockwise from x, that stays parallel to the stock's length; any
 *     turn will do if absent
 */
public record Piece(String mark, ConvexPolygon outline, int count, boolean mayMirror, OptionalDouble grainRad) {

    /**
     * Checks the numbers.
     *
     * @param mark what it is called
     * @param outline its shape
     * @param count 1 or more
     * @param mayMirror whether it may be laid face down
     * @param grainRad finite if present
     * @throws IllegalArgumentException if there is nothing to lay
     */
    public Piece {
        if (count < 1 || !Double.isFinite(grainRad.orElse(0))) {
            throw new IllegalArgumentException("nobody lays " + count + " pieces " + mark + " at " + grainRad);
        }
    }

    /** The same, never face down. */
    Piece faceUp() {
        return new Piece(mark, outline, count, false, grainRad);
    }
}
