package dev.calotte.stock;

import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * On what terms stock is to be had.
 *
 * @param price of one sheet or bar, or of a metre of roll, in any one currency
 * @param massKg of a square metre of a sheet or roll, or of a metre of bar, in kilograms
 * @param have how many pieces there are; as many as are needed if absent
 */
public record Terms(OptionalDouble price, OptionalDouble massKg, OptionalInt have) {

    /** Nothing is known, and there is as much as is needed. */
    public static final Terms OPEN = new Terms(OptionalDouble.empty(), OptionalDouble.empty(), OptionalInt.empty());

    /**
     * Checks the numbers.
     *
     * @param price 0 or more
     * @param massKg 0 or more
     * @param have 1 or more
     * @throws IllegalArgumentException if one of them is less, or not finite
     */
    public Terms {
        if (!(price.orElse(0) >= 0 && massKg.orElse(0) >= 0 && price.orElse(0) + massKg.orElse(0) < 1e300)) {
            throw new IllegalArgumentException("no price is " + price + " and no mass " + massKg);
        }
        if (have.orElse(1) < 1) {
            throw new IllegalArgumentException("there are " + have + " pieces");
        }
    }

    /**
     * The same terms for as much as is needed.
     *
     * @return terms without a limit
     */
    public Terms unlimited() {
        return new Terms(price, massKg, OptionalInt.empty());
    }
}
