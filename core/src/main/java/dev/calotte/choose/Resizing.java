package dev.calotte.choose;

import dev.calotte.dome.Size;
import dev.calotte.parts.Parts;
import java.util.function.Function;

/**
 * A dome that may also be built in another size.
 *
 * @param domes its parts in any size
 * @param size the size that it has
 * @param unit sizes are tried in whole multiples of this, so that what is printed is what was tried: millimetres, for a
 *     floor area square millimetres
 * @param mayGrow whether larger sizes are of use as well
 */
public record Resizing(Function<Size, Parts> domes, Size size, double unit, boolean mayGrow) {

    /** What lies so little below a multiple is one. */
    private static final double ROUNDING = 1e-6;

    /**
     * Checks the unit.
     *
     * @param domes its parts in any size
     * @param size the size that it has
     * @param unit above 0
     * @param mayGrow whether larger sizes are of use as well
     * @throws IllegalArgumentException if the unit is not above 0
     */
    public Resizing {
        if (!(unit > 0 && Double.isFinite(unit))) {
            throw new IllegalArgumentException("no size is a multiple of " + unit);
        }
    }

    /** A part or a multiple of the size, rounded down to whole units. */
    double times(double factor) {
        return down(size.value() * factor);
    }

    double down(double value) {
        return Math.floor(value / unit + ROUNDING) * unit;
    }

    Parts parts(double value) {
        return domes.apply(new Size(size.measure(), value));
    }
}
