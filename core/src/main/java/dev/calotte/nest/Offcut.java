package dev.calotte.nest;

/**
 * A rectangle of stock that is left, clear of all parts by the spacing. It keeps the margins of the stock.
 *
 * @param xMm where it begins along the stock
 * @param yMm where it begins across it
 * @param lengthMm along the stock
 * @param widthMm across it
 */
public record Offcut(double xMm, double yMm, double lengthMm, double widthMm) {}
