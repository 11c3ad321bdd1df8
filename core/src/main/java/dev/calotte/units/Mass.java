package dev.calotte.units;

import java.math.BigDecimal;

/** Masses as people write them, in kilograms. */
public final class Mass {

    /** The largest mass that is read: a thousand tonnes. */
    public static final double LARGEST_KG = 1e6;

    private static final BigDecimal POUND = new BigDecimal("0.45359237");
    static final double POUND_KG = POUND.doubleValue();
    private static final String EXAMPLE = "Write for example 0.69 kg, 1700 g or 1.5 lb.";

    private Mass() {}

    /**
     * Reads a mass: {@code 0.69 kg}, {@code 1700 g} or {@code 1.5 lb} (the international pound of 1959). The unit must be
     * there.
     *
     * @param text the mass as it is written, at most 64 characters
     * @return kilograms, 0 or more
     * @throws UnitException if the text is not a mass, has no unit, or is beyond {@link #LARGEST_KG}
     */
    public static double parseKg(String text) {
        UnitText reader = new UnitText(text, EXAMPLE);
        BigDecimal number = reader.number();
        double kg = switch (reader.rest()) {
            case "" -> throw reader.refuse("has no unit.", "Give the unit, for example kg or lb.");
            case "kg" -> number.doubleValue();
            case "g" -> number.movePointLeft(3).doubleValue();
            case "lb" -> number.multiply(POUND).doubleValue();
            default -> throw reader.refuse("is not a mass.");
        };
        if (kg > LARGEST_KG) {
            throw reader.refuse("is more than a thousand tonnes.", "Check the number and its unit.");
        }
        return kg;
    }
}
