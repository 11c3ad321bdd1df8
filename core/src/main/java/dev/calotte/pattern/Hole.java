package dev.calotte.pattern;

/**
 * A round hole in a pattern.
 *
 * @param x its centre in the pattern's frame, in millimetres
 * @param y its centre
 * @param diameterMm how wide it is
 */
public record Hole(double x, double y, double diameterMm) {}
