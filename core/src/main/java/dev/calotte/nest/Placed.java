package dev.calotte.nest;

import dev.calotte.geometry.ConvexPolygon;

/**
 * Where a part lies on its stock. The stock's frame begins at a corner, x along its length (the grain), y across it. A
 * corner (x, y) of the part comes to lie where it goes if, when mirrored, x changes its sign, then all is turned about
 * the origin and shifted.
 *
 * @param mark the mark of the part
 * @param xMm where the origin of the part's frame lies, along the stock
 * @param yMm where it lies across the stock
 * @param turnRad the turn, counter-clockwise, from 0 to below a full turn
 * @param mirrored whether it lies face down
 * @param outline its outline there
 */
public record Placed(String mark, double xMm, double yMm, double turnRad, boolean mirrored, ConvexPolygon outline) {}
