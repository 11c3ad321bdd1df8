package dev.calotte.export;

import java.util.Locale;

/**
 * A colour of the sRGB space (IEC 61966-2-1).
 *
 * @param red from 0 to 255
 * @param green from 0 to 255
 * @param blue from 0 to 255
 */
public record Colour(int red, int green, int blue) {

    private static final int MOST = 255;

    /**
     * Checks the three parts.
     *
     * @param red from 0 to 255
     * @param green from 0 to 255
     * @param blue from 0 to 255
     * @throws IllegalArgumentException if one lies outside
     */
    public Colour {
        if (Math.min(red, Math.min(green, blue)) < 0 || Math.max(red, Math.max(green, blue)) > MOST) {
            throw new IllegalArgumentException("no colour has the parts " + red + ", " + green + " and " + blue);
        }
    }

    /**
     * The colour in hexadecimal digits.
     *
     * @return for example {@code #ff0000}
     */
    public String hex() {
        return String.format(Locale.ROOT, "#%02x%02x%02x", red, green, blue);
    }
}
