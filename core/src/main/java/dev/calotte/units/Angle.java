package dev.calotte.units;

import java.math.BigDecimal;

/** Angles as people write them, in radians inside the library. */
public final class Angle {

    private static final BigDecimal MOST_DEGREES = BigDecimal.valueOf(1_000_000);
    private static final String EXAMPLE = "Write for example 7.5° or 7.5 deg.";

    private Angle() {}

    /**
     * An angle in degrees.
     *
     * @param rad the angle in radians
     * @return the angle in degrees
     */
    public static double degrees(double rad) {
        return rad * (180 / Math.PI);
    }

    /**
     * An angle as text.
     *
     * @param rad the angle in radians, finite
     * @param decimals how many digits after the point, from 0 to {@link NumberText#MOST_DECIMALS}
     * @return for example {@code 7.5°}
     * @throws IllegalArgumentException if the angle is not finite
     */
    public static String text(double rad, int decimals) {
        return UnitSystem.rounded(degrees(rad), decimals) + "°";
    }

    /**
     * Reads an angle: {@code 7.5°} or {@code 7.5 deg}. The unit must be there.
     *
     * @param text the angle as it is written, at most 64 characters
     * @return radians, finite
     * @throws UnitException if the text is not an angle, has no unit, or is beyond a million degrees
     */
    public static double parseRad(String text) {
        UnitText reader = new UnitText(text, EXAMPLE);
        boolean negative = reader.eat('-');
        BigDecimal degrees = reader.number();
        String unit = reader.rest();
        if (unit.isEmpty()) {
            throw reader.refuse("has no unit.", "Give the unit, as in 7.5°.");
        }
        if (!unit.equals("°") && !unit.equals("deg")) {
            throw reader.refuse("is not an angle.");
        }
        if (degrees.compareTo(MOST_DEGREES) > 0) {
            throw reader.refuse("is more than a million degrees.", "Check the number.");
        }
        return (negative ? degrees.negate() : degrees).doubleValue() * (Math.PI / 180);
    }
}
