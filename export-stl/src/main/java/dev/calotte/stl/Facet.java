package dev.calotte.stl;

/**
 * A triangle of the surface.
 *
 * @param a a corner
 * @param b the next, counter-clockwise seen from outside
 * @param c the last
 */
record Facet(Place a, Place b, Place c) {}
