package dev.calotte.units;

import java.math.BigDecimal;

/** Areas as people write them, in square millimetres. */
public final class Area {

    /** The largest area that is read, either way: a million square kilometres. */
    public static final double LARGEST_MM2 = 1e18;

    private static final BigDecimal SQUARE_FOOT = new BigDecimal("92903.04");
    private static final String EXAMPLE = "Write for example 20 m², 20 m2, 200 ft² or 200 sq ft.";

    private Area() {}

    /**
     * Reads an area: {@code 20 m²}, {@code 20 m2}, {@code 30000 cm2}, {@code 200 ft²}, {@code 200 ft2} or
     * {@code 200 sq ft}. The unit must be there.
     *
     * @param text the area as it is written, at most 64 characters
     * @return square millimetres, finite
     * @throws UnitException if the text is not an area, has no unit, or is beyond {@link #LARGEST_MM2}
     */
    public static double parseMm2(String text) {
        UnitText reader = new UnitText(text, EXAMPLE);
        boolean negative = reader.eat('-');
        double mm2 = unsigned(reader).doubleValue();
        if (mm2 > LARGEST_MM2) {
            throw reader.refuse("is more than a million square kilometres.", "Check the number and its unit.");
        }
        return negative && mm2 != 0 ? -mm2 : mm2;
    }

    private static BigDecimal unsigned(UnitText reader) {
        BigDecimal number = reader.number();
        return switch (reader.rest()) {
            case "" -> throw reader.refuse("has no unit.", "Give the unit, for example m² or sq ft.");
            case "mm²", "mm2" -> number;
            case "cm²", "cm2" -> number.movePointRight(2);
            case "m²", "m2" -> number.movePointRight(6);
            case "ft²", "ft2", "sq ft" -> number.multiply(SQUARE_FOOT);
            default -> throw reader.refuse("is not an area.");
        };
    }
}
