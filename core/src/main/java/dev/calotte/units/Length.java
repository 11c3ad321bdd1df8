package dev.calotte.units;

import java.math.BigDecimal;

/**
 * Lengths as people write them, in millimetres.
 *
 * <pre>{@code
 * double mm = Length.parseMm("4' 7 1/4\"", UnitSystem.METRIC);
 * }</pre>
 */
public final class Length {

    /** One inch in millimetres, exactly (the international yard and pound agreement, 1959). */
    public static final double INCH_MM = 25.4;

    /** The largest length that is read, either way: a thousand kilometres. */
    public static final double LARGEST_MM = 1e9;

    private static final BigDecimal INCH = new BigDecimal("25.4");
    private static final BigDecimal TWELVE = BigDecimal.valueOf(12);
    private static final String EXAMPLE = "Write for example 3.2 m, 1220 mm, 122 cm, 10 ft, 4' 7 1/4\" or 3/4 in.";

    private Length() {}

    /**
     * Reads a length: {@code 3.2 m}, {@code 1220 mm}, {@code 122 cm}, {@code 10 ft}, {@code 3/4 in},
     * {@code 4' 7 1/4"}, {@code 10 ft 3 1/2 in}, with plain or typographic primes; a minus stands before the whole.
     *
     * @param text the length as it is written, at most 64 characters
     * @param bare what a number without a unit means: millimetres or inches
     * @return millimetres, finite
     * @throws UnitException if the text is not a length, or is beyond {@link #LARGEST_MM}
     */
    public static double parseMm(String text, UnitSystem bare) {
        UnitText reader = new UnitText(text, EXAMPLE);
        boolean negative = reader.eat('-');
        double mm = unsigned(reader, bare).doubleValue();
        if (!reader.done()) {
            throw reader.refuse("is not a length.");
        }
        if (mm > LARGEST_MM) {
            throw reader.refuse("is more than a thousand kilometres.", "Check the number and its unit.");
        }
        return negative && mm != 0 ? -mm : mm;
    }

    private static BigDecimal unsigned(UnitText reader, UnitSystem bare) {
        BigDecimal number = reader.number();
        String unit = reader.unit();
        if (unit.isEmpty()) {
            unit = bare == UnitSystem.METRIC ? "mm" : "in";
        }
        return switch (unit) {
            case "mm" -> number;
            case "cm" -> number.movePointRight(1);
            case "m" -> number.movePointRight(3);
            case "in", "\"" -> number.multiply(INCH);
            case "ft", "'" ->
                number.multiply(TWELVE).add(inchesAfter(number, reader)).multiply(INCH);
            default -> throw reader.refuse("is not a length: " + unit + " is not a unit here.");
        };
    }

    private static BigDecimal inchesAfter(BigDecimal feet, UnitText reader) {
        if (reader.done()) {
            return BigDecimal.ZERO;
        }
        BigDecimal inches = reader.number();
        String unit = reader.unit();
        if (!unit.equals("in") && !unit.equals("\"")) {
            throw reader.refuse("does not say that what follows the feet is inches.");
        }
        if (feet.stripTrailingZeros().scale() > 0 || inches.compareTo(TWELVE) >= 0) {
            throw reader.refuse("is not a length.", "Write whole feet, then less than 12 inches.");
        }
        return inches;
    }
}
