package dev.calotte.units;

/**
 * The units that a reader works in: how lengths, areas and volumes are printed, and what a bare number means.
 *
 * <pre>{@code
 * String tape = UnitSystem.IMPERIAL.length(1412.6);
 * }</pre>
 */
public enum UnitSystem {
    /** Millimetres, square and cubic metres. */
    METRIC {
        @Override
        public String length(double mm, int decimals) {
            return rounded(mm, decimals) + " mm";
        }

        @Override
        public String longLength(double mm) {
            return NumberText.fixed(mm / 1000, 1) + " m";
        }

        @Override
        public String area(double mm2) {
            return NumberText.fixed(mm2 / 1e6, 2) + " m²";
        }

        @Override
        public String volume(double mm3) {
            return NumberText.fixed(mm3 / 1e9, 2) + " m³";
        }

        @Override
        public String mass(double kg) {
            return NumberText.fixed(kg, 1) + " kg";
        }

        @Override
        public String smallLength(double mm) {
            return length(mm, 1);
        }
    },
    /** Feet and inches to the sixteenth, square and cubic feet. */
    IMPERIAL {
        @Override
        public String length(double mm, int decimals) {
            return feetAndInches(mm);
        }

        @Override
        public String longLength(double mm) {
            return NumberText.fixed(mm / FOOT_MM, 1) + " ft";
        }

        @Override
        public String area(double mm2) {
            return NumberText.fixed(mm2 / FOOT_MM / FOOT_MM, 2) + " sq ft";
        }

        @Override
        public String volume(double mm3) {
            return NumberText.fixed(mm3 / FOOT_MM / FOOT_MM / FOOT_MM, 2) + " cu ft";
        }

        @Override
        public String mass(double kg) {
            return NumberText.fixed(kg / Mass.POUND_KG, 1) + " lb";
        }

        @Override
        public String smallLength(double mm) {
            return NumberText.fixed(mm / Length.INCH_MM, 2) + "\"";
        }
    };

    private static final double FOOT_MM = 12 * Length.INCH_MM;
    private static final int SIXTEENTHS = 16;
    private static final double LONGEST_TAPE_MM = 1e15;

    /**
     * A length as a person measures it: to the millimetre, or to the sixteenth of an inch.
     *
     * @param mm millimetres, finite
     * @return for example {@code 1084 mm} or {@code 3' 6 11/16"}
     * @throws IllegalArgumentException if the length is not finite, or in feet beyond 1e15 mm
     */
    public String length(double mm) {
        return length(mm, 0);
    }

    /**
     * The least difference of lengths that {@link #length(double)} shows.
     *
     * @return a millimetre, or a sixteenth of an inch in millimetres
     */
    public double leastLengthMm() {
        return this == METRIC ? 1 : Length.INCH_MM / SIXTEENTHS;
    }

    /**
     * The least difference of areas that {@link #area(double)} shows.
     *
     * @return a hundredth of a square metre or of a square foot, in square millimetres
     */
    public double leastAreaMm2() {
        return this == METRIC ? 1e4 : FOOT_MM * FOOT_MM / 100;
    }

    /**
     * A length to a number of decimals.
     *
     * @param mm millimetres, finite
     * @param decimals how many digits after the point of a millimetre, from 0 to {@link NumberText#MOST_DECIMALS};
     *     inches go by sixteenths whatever it says
     * @return for example {@code 1084.3 mm} or {@code 3' 6 11/16"}
     * @throws IllegalArgumentException if the length is not finite, or in feet beyond 1e15 mm
     */
    public abstract String length(double mm, int decimals);

    /**
     * A sum of lengths, such as all that is to be bought, to one decimal.
     *
     * @param mm millimetres, finite
     * @return for example {@code 198.4 m} or {@code 603.6 ft}
     * @throws IllegalArgumentException if the length is not finite
     */
    public abstract String longLength(double mm);

    /**
     * A length for which sixteenths of an inch are too coarse, such as an error.
     *
     * @param mm millimetres, finite
     * @return for example {@code 2.4 mm} or {@code 0.09"}
     * @throws IllegalArgumentException if the length is not finite
     */
    public abstract String smallLength(double mm);

    /**
     * An area to two decimals.
     *
     * @param mm2 square millimetres, finite
     * @return for example {@code 31.20 m²} or {@code 335.83 sq ft}
     * @throws IllegalArgumentException if the area is not finite
     */
    public abstract String area(double mm2);

    /**
     * A volume to two decimals.
     *
     * @param mm3 cubic millimetres, finite
     * @return for example {@code 63.41 m³} or {@code 2239.30 cu ft}
     * @throws IllegalArgumentException if the volume is not finite
     */
    public abstract String volume(double mm3);

    /**
     * A mass to one decimal.
     *
     * @param kg kilograms, finite
     * @return for example {@code 4.1 kg} or {@code 9.1 lb}
     * @throws IllegalArgumentException if the mass is not finite
     */
    public abstract String mass(double kg);

    /** A number to a number of decimals, none included; halves go away from zero. */
    static String rounded(double value, int decimals) {
        if (decimals > 0) {
            return NumberText.fixed(value, decimals);
        }
        return NumberText.trimmed(Math.copySign(Math.floor(Math.abs(value) + 0.5), value), 1);
    }

    /** Carries from sixteenths to inches and on to feet, because all three come from one whole number. */
    private static String feetAndInches(double mm) {
        if (!(Math.abs(mm) <= LONGEST_TAPE_MM)) {
            throw new IllegalArgumentException("no tape shows " + mm + " mm");
        }
        long sixteenths = Math.round(Math.abs(mm) / Length.INCH_MM * SIXTEENTHS);
        long inches = sixteenths / SIXTEENTHS;
        String sign = mm < 0 && sixteenths > 0 ? "-" : "";
        String feet = inches >= 12 ? inches / 12 + "' " : "";
        return sign + feet + inches(inches % 12, (int) (sixteenths % SIXTEENTHS), inches >= 12) + "\"";
    }

    private static String inches(long whole, int sixteenths, boolean afterFeet) {
        if (sixteenths == 0) {
            return Long.toString(whole);
        }
        int common = Integer.lowestOneBit(sixteenths);
        String fraction = sixteenths / common + "/" + SIXTEENTHS / common;
        return whole == 0 && !afterFeet ? fraction : whole + " " + fraction;
    }
}
