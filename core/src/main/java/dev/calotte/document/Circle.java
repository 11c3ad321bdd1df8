package dev.calotte.document;

/**
 * A circle.
 *
 * @param operation what is done along it
 * @param xMm its centre
 * @param yMm its centre
 * @param radiusMm its radius, above 0
 */
public record Circle(Operation operation, double xMm, double yMm, double radiusMm) implements Shape {}
