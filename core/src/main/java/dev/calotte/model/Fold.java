package dev.calotte.model;

import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * A line to fold along.
 *
 * @param from one end
 * @param to the other
 * @param hollow whether the parts beside it turn up towards the reader, not down
 */
record Fold(Vector2D from, Vector2D to, boolean hollow) {}
