package dev.calotte.check;

import dev.calotte.check.RecordedDome.HubKind;
import java.util.OptionalDouble;

/**
 * The plate of a kind of hubs, as the record has it.
 *
 * @param kind the hubs
 * @param holeMm the diameter of its holes, one for each strut
 * @param holeCircleMm the diameter of the circle on which they stand
 * @param diameterMm across the disc; absent if the plate has a shape of its own, which the record does not hold
 */
public record RecordedPlate(HubKind kind, double holeMm, double holeCircleMm, OptionalDouble diameterMm) {

    /**
     * The same as the tool is led.
     *
     * @param kerfMm how wide a cut is, 0 or more
     * @return a plate with smaller holes and a larger rim
     */
    public RecordedPlate withCutter(double kerfMm) {
        OptionalDouble rim = diameterMm.isPresent() ? OptionalDouble.of(diameterMm.getAsDouble() + kerfMm) : diameterMm;
        return new RecordedPlate(kind, holeMm - kerfMm, holeCircleMm, rim);
    }
}
